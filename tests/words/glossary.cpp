// Prints docs/words.md; tests/words/run-glossary holds the file to it.
#include <iostream>

#include <quoin/render/glossary.hpp>

int main() { std::cout << quoin::glossary_markdown(); }
