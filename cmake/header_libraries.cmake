# Boost, nlohmann/json and fmt for a compiler with a system of its own: all three are headers alone.
#
# They are reached through a folder of links: the folder that they lie in has the headers of this
# machine's C library, too, which are not those that the module is compiled against.
set(headers ${PROJECT_BINARY_DIR}/headers)
file(MAKE_DIRECTORY ${headers})
foreach(header boost/version.hpp nlohmann/json.hpp fmt/format.h)
    get_filename_component(library ${header} DIRECTORY)
    find_path(${library}_folder ${header} PATHS /usr/include /usr/local/include REQUIRED
              NO_DEFAULT_PATH NO_CMAKE_FIND_ROOT_PATH)
    file(CREATE_LINK ${${library}_folder}/${library} ${headers}/${library} SYMBOLIC)
endforeach()
add_library(header-libraries INTERFACE)
target_include_directories(header-libraries SYSTEM INTERFACE $<BUILD_INTERFACE:${headers}>)
# Nothing here is written as binary floating point, nor as a locale has it: fmt need not know how.
target_compile_definitions(header-libraries INTERFACE FMT_HEADER_ONLY
    FMT_USE_FLOAT=0 FMT_USE_DOUBLE=0 FMT_USE_LONG_DOUBLE=0 FMT_STATIC_THOUSANDS_SEPARATOR=',')
foreach(name Boost::headers nlohmann_json::nlohmann_json fmt::fmt)
    add_library(${name} ALIAS header-libraries)
endforeach()
