# How every target of the project is compiled: language, build types, warnings, sanitizers.
if(NOT PROJECT_IS_TOP_LEVEL)
    # Inside another project its choices stand; only the language level is ours.
    function(quoin_compile target)
        target_compile_features(${target} PUBLIC cxx_std_20)
    endfunction()
    return()
endif()

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)

get_property(multi_config GLOBAL PROPERTY GENERATOR_IS_MULTI_CONFIG)
if(NOT CMAKE_BUILD_TYPE AND NOT multi_config)
    set(CMAKE_BUILD_TYPE Release CACHE STRING "Debug, Release or RelWithDebInfo" FORCE)
endif()

# A release keeps its assertions (no NDEBUG): they cost microseconds, a wrong figure costs more.
set(CMAKE_CXX_FLAGS_RELEASE "-O2")
set(CMAKE_CXX_FLAGS_MINSIZEREL "-Oz")
# Debug is for the test run: fast enough for millions of cases, small enough to link quickly.
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1 -D_GLIBCXX_ASSERTIONS")

find_program(CCACHE ccache)
mark_as_advanced(CCACHE)
if(CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
    set(CMAKE_CXX_COMPILER_LAUNCHER ${CCACHE})
endif()

function(quoin_compile target)
    target_compile_features(${target} PUBLIC cxx_std_20)
    target_compile_options(${target} PRIVATE
        -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wold-style-cast
        -Wcast-align -Wcast-qual -Wnon-virtual-dtor -Woverloaded-virtual
        -Wdouble-promotion -Wfloat-conversion -Wformat=2 -Wimplicit-fallthrough -Wunused
        $<$<CXX_COMPILER_ID:GNU>:-Wduplicated-cond -Wduplicated-branches -Wlogical-op>
        # gcc 12 sees an overlap in every std::string::insert (its bug 105651).
        $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>
        # Where several sources are compiled as one, a name of one may hide its neighbour's.
        $<$<BOOL:${CMAKE_UNITY_BUILD}>:-Wno-shadow>
        $<$<BOOL:${QUOIN_WERROR}>:-Werror>)
    if(QUOIN_SANITIZE)
        target_compile_options(${target} PRIVATE
            -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
        target_link_options(${target} PUBLIC -fsanitize=address,undefined)
    endif()
    if(EMSCRIPTEN)
        # Made small, since it travels: as one unit, and without the names of its types.
        target_compile_options(${target} PUBLIC -fwasm-exceptions -flto -fno-rtti)
    endif()
    if(QUOIN_FUZZ)
        # The branches taken are counted; the main of libFuzzer is linked by tests/fuzz.
        target_compile_options(${target} PRIVATE -fsanitize=fuzzer-no-link)
    endif()
endfunction()
