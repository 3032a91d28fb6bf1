# What an installation has: library, headers, program, data, and the package for find_package(quoin).
include(CMakePackageConfigHelpers)

set(package_dir ${CMAKE_INSTALL_LIBDIR}/cmake/quoin)

install(TARGETS quoin-library EXPORT quoin-targets)
install(DIRECTORY include/quoin TYPE INCLUDE)
install(EXPORT quoin-targets NAMESPACE quoin:: DESTINATION ${package_dir})

configure_package_config_file(cmake/quoinConfig.cmake.in quoinConfig.cmake
    INSTALL_DESTINATION ${package_dir})
write_basic_package_version_file(quoinConfigVersion.cmake COMPATIBILITY SameMinorVersion)
install(FILES ${PROJECT_BINARY_DIR}/quoinConfig.cmake
              ${PROJECT_BINARY_DIR}/quoinConfigVersion.cmake
        DESTINATION ${package_dir})

if(TARGET quoin)
    install(TARGETS quoin)
    install(TARGETS quoin-whole DESTINATION libexec) # where quoin looks for it
endif()
# The program looks for ../share/quoin beside itself, so this place is not a matter of taste.
install(DIRECTORY rates schemas examples DESTINATION share/quoin
        PATTERN "examples/run" EXCLUDE)
install(FILES LICENSE DESTINATION share/doc/quoin)
if(QUOIN_BROWSER_MODULE)
    install(FILES src/apps/browser/licenses.txt DESTINATION share/doc/quoin
            RENAME browser-licenses.txt)
endif()
