# The engine for browsers, built by a build of its own in browser/ with the preset wasm: another
# compiler for another machine. With the page it makes what a file that is taken home is made of;
# `home_parts` is the source file that embeds those.
set(home_parts ${PROJECT_BINARY_DIR}/home_parts.cpp)
get_property(home_files GLOBAL PROPERTY QUOIN_HOME_FILES)
if(NOT QUOIN_BROWSER_MODULE OR NOT home_files)
    execute_process(COMMAND ${CMAKE_COMMAND} -D OUT=${home_parts} -D PACKED=
        -P ${PROJECT_SOURCE_DIR}/cmake/embed_home.cmake COMMAND_ERROR_IS_FATAL ANY)
endif()
if(NOT QUOIN_BROWSER_MODULE)
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
add_custom_target(browser-module ALL DEPENDS ${module_files})
if(NOT home_files)
    return()
endif()

set(page ${PROJECT_BINARY_DIR}/page)
set(packed ${page}/home_parts.txt)
set(pack ${PROJECT_SOURCE_DIR}/src/page/pack.mjs)
add_custom_command(OUTPUT ${packed}
    COMMAND ${NODE} ${pack} ${page} ${module_folder}
    COMMAND ${CMAKE_COMMAND} -D FROM=${page}/home_parts -D TO=${page}/home_parts.xz
            -P ${PROJECT_SOURCE_DIR}/cmake/xz.cmake
    COMMAND ${NODE} ${pack} ${page}
    DEPENDS ${home_files} ${module_files} ${pack} ${PROJECT_SOURCE_DIR}/src/page/home/letters.mjs
            ${PROJECT_SOURCE_DIR}/cmake/xz.cmake
    COMMENT "Packing what goes home" VERBATIM)
add_custom_command(OUTPUT ${home_parts}
    COMMAND ${CMAKE_COMMAND} -D OUT=${home_parts} -D PACKED=${packed}
            -D DOCUMENTS=${page}/home_documents.json
            -P ${PROJECT_SOURCE_DIR}/cmake/embed_home.cmake
    DEPENDS ${packed} ${home_files} ${PROJECT_SOURCE_DIR}/cmake/embed_home.cmake
    COMMENT "Embedding what goes home" VERBATIM)
