// Prints the types that the page knows the answers by, and the codes of the terms that it explains:
// src/page/answer_types.ts.
#include <iostream>

#include <quoin/questions/questions.hpp>
#include <quoin/words/glossary.hpp>

int main() {
    std::vector<quoin::Shape> shapes;
    for (const quoin::Question& question : quoin::questions()) {
        if (question.shape != nullptr) shapes.push_back(question.shape());
    }
    std::cout
        << "// What the answers hold; amounts, rates and dates are text. Printed by the program "
           "page-types\n// of the tests, never written by hand.\n"
        << quoin::types_of(shapes);
    std::cout << "\nexport type TermCode =";
    for (const auto& term : quoin::codes<quoin::Term>) std::cout << "\n    | '" << term.code << "'";
    std::cout << ";\n";
}
