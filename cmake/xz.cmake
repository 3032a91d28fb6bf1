# Compresses a file as small as xz can.
#
#   cmake -D FROM=a -D TO=a.xz -P xz.cmake
cmake_minimum_required(VERSION 3.25)
file(ARCHIVE_CREATE OUTPUT ${TO} PATHS ${FROM} FORMAT raw COMPRESSION XZ COMPRESSION_LEVEL 9)
