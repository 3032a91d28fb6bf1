# Writes a source file that embeds the engine for browsers (src/apps/whole/browser_module.hpp).
#
#   cmake -D OUT=browser_module.cpp -D FOLDER=browser -P embed_module.cmake
#
# FOLDER has quoin.wasm, quoin.mjs and licenses.txt; empty: a build without a module. The assembler
# includes the files, as with the page's (embed.cmake).
cmake_minimum_required(VERSION 3.25)
set(blobs)
set(module "return nullptr;")
if(FOLDER)
    # A gzip header holds a time: a fixed one, so that the same module gives the same program.
    set(ENV{SOURCE_DATE_EPOCH} 0)
    file(ARCHIVE_CREATE OUTPUT ${FOLDER}/quoin.wasm.gz PATHS ${FOLDER}/quoin.wasm
         FORMAT raw COMPRESSION GZip COMPRESSION_LEVEL 9)
    foreach(pair wasm_gzip=quoin.wasm.gz loader=quoin.mjs licenses=licenses.txt)
        string(REPLACE "=" ";" pair ${pair})
        list(GET pair 0 name)
        list(GET pair 1 file)
        file(SHA256 ${FOLDER}/${file} hash)
        string(APPEND blobs "// ${hash}\nEMBED(module_${name}, \"${FOLDER}/${file}\")\n")
    endforeach()
    set(module "static const BrowserModule module{PIECE(module_wasm_gzip), PIECE(module_loader),
                                      PIECE(module_licenses)};
    return &module;")
endif()

file(WRITE ${OUT}.new "// The engine for browsers, embedded. Written by cmake/embed_module.cmake.
#include \"apps/whole/browser_module.hpp\"

// NOLINTBEGIN(bugprone-macro-parentheses): a name that is declared stands in none
#define EMBED(name, file)                                                       \\
    asm(\".pushsection .rodata\\n\" #name \":\\n.incbin \\\"\" file \"\\\"\\n\"               \\
        #name \"_end:\\n.byte 0\\n.popsection\\n\");                                 \\
    extern \"C\" const char name[] asm(#name);                                    \\
    extern \"C\" const char name##_end[] asm(#name \"_end\");
// NOLINTEND(bugprone-macro-parentheses)
#define PIECE(name) std::string_view(name, static_cast<std::size_t>(name##_end - name))

${blobs}
namespace quoin::apps {

const BrowserModule* browser_module() {
    ${module}
}

} // namespace quoin::apps
")
file(COPY_FILE ${OUT}.new ${OUT} ONLY_IF_DIFFERENT)
file(REMOVE ${OUT}.new)
