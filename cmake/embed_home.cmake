# Writes a source file that embeds what a file that is taken home is made of
# (src/apps/whole/home_parts.hpp).
#
#   cmake -D OUT=home_parts.cpp -D PACKED=home_parts.txt -D DOCUMENTS=home_documents.json -P embed_home.cmake
#
# PACKED empty: a build without a page, or without an engine for browsers. The assembler includes the
# files, as with the page's (embed.cmake).
cmake_minimum_required(VERSION 3.25)
set(blobs)
set(parts "return nullptr;")
if(PACKED)
    foreach(name packed documents)
        string(TOUPPER ${name} file)
        file(SHA256 ${${file}} hash)
        string(APPEND blobs "// ${hash}\nEMBED(home_${name}, \"${${file}}\")\n")
    endforeach()
    set(parts "static const HomeParts parts{PIECE(home_packed), PIECE(home_documents)};
    return &parts;")
endif()

file(WRITE ${OUT}.new "// What a file that is taken home is made of, embedded. Written by cmake/embed_home.cmake.
#include \"apps/whole/home_parts.hpp\"

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

const HomeParts* home_parts() {
    ${parts}
}

} // namespace quoin::apps
")
file(COPY_FILE ${OUT}.new ${OUT} ONLY_IF_DIFFERENT)
file(REMOVE ${OUT}.new)
