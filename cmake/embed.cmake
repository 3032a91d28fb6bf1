# Writes a source file that embeds the page's files into the program (src/apps/whole/page_assets.hpp).
#
#   cmake -D OUT=page_assets.cpp -D "FILES=a/index.html|a/app.js" -P embed.cmake
#
# index.html is served at "/". Every other file is served under a name with a hash of its content,
# which index.html is made to use, and under its plain name for files that name one another. Copies
# and their gzip variants lie beside OUT, whose assembler includes them: no compiler reads megabytes
# of numbers. A file that has its gzip variant beside it keeps that. FILES empty: a build without a page.
cmake_minimum_required(VERSION 3.25)
string(REPLACE "|" ";" files "${FILES}")
get_filename_component(folder ${OUT} DIRECTORY)
set(folder ${folder}/embedded)
file(REMOVE_RECURSE ${folder})
file(MAKE_DIRECTORY ${folder})

set(types
    html text/html  js text/javascript  css text/css  txt text/plain  json application/json
    map application/json  svg image/svg+xml  png image/png  ico image/x-icon  woff2 font/woff2
    wasm application/wasm  webmanifest application/manifest+json)

# A gzip header holds a time: a fixed one, so that the same page gives the same program.
set(ENV{SOURCE_DATE_EPOCH} 0)

set(blobs)
set(rows)
set(count 0)

# embed(NAME PATH [HASHED]): serves the copy of this name under PATH, and under HASHED for ever.
function(embed name path)
    string(REGEX REPLACE "^.*[.]" "" ending ${name})
    list(FIND types ${ending} at)
    if(at LESS 0)
        message(FATAL_ERROR "${name}: no media type is known for its ending (cmake/embed.cmake)")
    endif()
    math(EXPR at "${at} + 1")
    list(GET types ${at} type)
    if(type MATCHES "^text/")
        set(type "${type}; charset=utf-8")
    endif()
    file(SHA256 ${folder}/${name} hash)
    string(SUBSTRING ${hash} 0 16 tag)
    if(NOT EXISTS ${folder}/${name}.gz)
        file(ARCHIVE_CREATE OUTPUT ${folder}/${name}.gz PATHS ${folder}/${name}
             FORMAT raw COMPRESSION GZip COMPRESSION_LEVEL 9)
    endif()
    file(SIZE ${folder}/${name} size)
    file(SIZE ${folder}/${name}.gz small)
    set(gzip "{}")
    math(EXPR worth "${size} * 9 / 10")
    if(small LESS worth)
        set(gzip "piece(gz_${count}, gz_${count}_end)")
    endif()
    string(APPEND blobs "// ${hash}\nEMBED(as_${count}, \"${folder}/${name}\")\n"
        "EMBED(gz_${count}, \"${folder}/${name}.gz\")\n")
    set(content "piece(as_${count}, as_${count}_end), ${gzip}")
    string(APPEND rows
        "        {\"${path}\", \"${type}\", \"${tag}\", false,\n         ${content}},\n")
    if(ARGC GREATER 2)
        string(APPEND rows
            "        {\"${ARGV2}\", \"${type}\", \"${tag}\", true,\n         ${content}},\n")
    endif()
    math(EXPR count "${count} + 1")
    set(blobs "${blobs}" PARENT_SCOPE)
    set(rows "${rows}" PARENT_SCOPE)
    set(count ${count} PARENT_SCOPE)
endfunction()

set(index)
set(hashed_names)
foreach(file ${files})
    get_filename_component(name ${file} NAME)
    file(COPY_FILE ${file} ${folder}/${name})
    if(EXISTS ${file}.gz)
        file(COPY_FILE ${file}.gz ${folder}/${name}.gz)
    endif()
    if(name STREQUAL "index.html")
        set(index ${folder}/${name})
        continue()
    endif()
    file(SHA256 ${file} hash)
    string(SUBSTRING ${hash} 0 16 hash)
    string(REGEX REPLACE "^(.*)([.][^.]*)$" "\\1-${hash}\\2" hashed ${name})
    list(APPEND hashed_names "${name}|${hashed}")
    embed(${name} /assets/${name} /assets/${hashed})
endforeach()
if(index)
    file(READ ${index} text)
    foreach(pair ${hashed_names})
        string(REPLACE "|" ";" pair ${pair})
        list(GET pair 0 name)
        list(GET pair 1 hashed)
        string(REPLACE "\"/assets/${name}\"" "\"/assets/${hashed}\"" text "${text}")
    endforeach()
    file(WRITE ${index} "${text}")
    embed(index.html /)
elseif(files)
    message(FATAL_ERROR "the page has no index.html")
endif()

file(WRITE ${OUT}.new "// The page's files, embedded. Written by cmake/embed.cmake.
#include \"apps/whole/page_assets.hpp\"

// NOLINTBEGIN(bugprone-macro-parentheses): a name that is declared stands in none
#define EMBED(name, file)                                                       \\
    asm(\".pushsection .rodata\\n\" #name \":\\n.incbin \\\"\" file \"\\\"\\n\"               \\
        #name \"_end:\\n.byte 0\\n.popsection\\n\");                                 \\
    extern \"C\" const char name[] asm(#name);                                    \\
    extern \"C\" const char name##_end[] asm(#name \"_end\");
// NOLINTEND(bugprone-macro-parentheses)

${blobs}
namespace quoin::apps {

[[maybe_unused]] static std::string_view piece(const char* begin, const char* end) {
    return {begin, static_cast<std::size_t>(end - begin)};
}

const std::vector<Asset>& page_assets() {
    static const std::vector<Asset> assets = {
${rows}    };
    return assets;
}

} // namespace quoin::apps
")
file(COPY_FILE ${OUT}.new ${OUT} ONLY_IF_DIFFERENT)
file(REMOVE ${OUT}.new)
