// Writing a list of lots.
#include "lots_list.hpp"

#include <algorithm>
#include <vector>

namespace quoin::apps {
namespace {

void add_cell(std::string& row, bool first, const std::string& text) {
    if (!first) row += ',';
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        row += text;
        return;
    }
    row += '"';
    for (const char letter : text) row += letter == '"' ? std::string("\"\"") : std::string{letter};
    row += '"';
}

std::vector<std::string> columns_of(const Value& rows) {
    std::vector<std::string> columns;
    for (const Value& row : rows.items) {
        for (const Key& key : row.keys) {
            const bool there = std::find(columns.begin(), columns.end(), key.name) != columns.end();
            if (!there) columns.push_back(key.name);
        }
    }
    return columns;
}

} // namespace

std::string lots_list(const Value& rows) {
    const std::vector<std::string> columns = columns_of(rows);
    std::string list;
    for (std::size_t i = 0; i < columns.size(); ++i) add_cell(list, i == 0, columns[i]);
    list += '\n';
    for (const Value& row : rows.items) {
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const Value* cell = row.find(columns[i]);
            add_cell(list, i == 0, cell != nullptr ? cell->literal : std::string());
        }
        list += '\n';
    }
    return list;
}

} // namespace quoin::apps
