# The engine for browsers, built by a build of its own in browser/ with the preset wasm: another
# compiler for another machine. Gives `browser_module`, the source file that embeds it.
set(browser_module ${PROJECT_BINARY_DIR}/browser_module.cpp)
if(NOT QUOIN_BROWSER_MODULE)
    execute_process(COMMAND ${CMAKE_COMMAND} -D OUT=${browser_module} -D FOLDER=
        -P ${PROJECT_SOURCE_DIR}/cmake/embed_module.cmake COMMAND_ERROR_IS_FATAL ANY)
    return()
endif()

# What it is made of (its own build knows this to the file, and does only what is needed).
file(GLOB_RECURSE module_sources CONFIGURE_DEPENDS
    ${PROJECT_SOURCE_DIR}/include/quoin/*.hpp
    ${PROJECT_SOURCE_DIR}/src/apps/wire/* ${PROJECT_SOURCE_DIR}/src/apps/browser/*)
foreach(floor exact text pricebook lending home loan inquiry answers words render questions)
    file(GLOB_RECURSE of_floor CONFIGURE_DEPENDS
        ${PROJECT_SOURCE_DIR}/src/${floor}/*.cpp ${PROJECT_SOURCE_DIR}/src/${floor}/*.hpp)
    list(APPEND module_sources ${of_floor})
endforeach()
foreach(name drawing_files files harmless_svg interruption loading picture_header pictures)
    file(GLOB of_name ${PROJECT_SOURCE_DIR}/src/apps/${name}.?pp)
    list(APPEND module_sources ${of_name})
endforeach()

set(module_folder ${PROJECT_BINARY_DIR}/browser)
set(module_files quoin.wasm quoin.mjs licenses.txt)
list(TRANSFORM module_files PREPEND ${module_folder}/)
add_custom_command(OUTPUT ${module_files}
    COMMAND ${CMAKE_COMMAND} --preset wasm -S ${PROJECT_SOURCE_DIR} -B ${module_folder} --log-level=ERROR
    COMMAND ${CMAKE_COMMAND} --build ${module_folder} --target quoin-browser
    COMMAND ${CMAKE_COMMAND} -E touch ${module_files}
    DEPENDS ${module_sources} ${PROJECT_SOURCE_DIR}/CMakePresets.json
            ${PROJECT_SOURCE_DIR}/cmake/compiler.cmake
            ${PROJECT_SOURCE_DIR}/cmake/header_libraries.cmake
    WORKING_DIRECTORY ${PROJECT_SOURCE_DIR}
    COMMENT "Building the engine for browsers" VERBATIM)
add_custom_command(OUTPUT ${browser_module}
    COMMAND ${CMAKE_COMMAND} -D OUT=${browser_module} -D FOLDER=${module_folder}
            -P ${PROJECT_SOURCE_DIR}/cmake/embed_module.cmake
    DEPENDS ${module_files} ${PROJECT_SOURCE_DIR}/cmake/embed_module.cmake
    COMMENT "Embedding the engine for browsers" VERBATIM)
