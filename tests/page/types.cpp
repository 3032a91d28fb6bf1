// Prints the types that the page knows the answers by, and what the parts of a month are called:
// src/page/answer_types.ts.
#include <iostream>

#include <quoin/lending/month_part.hpp>
#include <quoin/questions/questions.hpp>

int main() {
    std::vector<quoin::Shape> shapes;
    for (const quoin::Question& question : quoin::questions()) {
        if (question.shape != nullptr) shapes.push_back(question.shape());
    }
    std::cout
        << "// What the answers hold; amounts, rates and dates are text. Printed by the program "
           "page-types\n// of the tests, never written by hand.\n"
        << quoin::types_of(shapes)
        << "\n/// What the parts of a month are called.\nexport const month_part_names = {\n";
    for (const quoin::MonthPartRow& row : quoin::month_parts) {
        std::cout << "    " << row.code << ": \"" << row.name << "\",\n";
    }
    std::cout << "};\n";
}
