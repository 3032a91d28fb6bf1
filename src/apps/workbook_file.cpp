// Writing a workbook through libxlsxwriter, which takes values as binary floating point: the one
// place where figures leave as such. A reader recomputes them from the formulas.
#include "workbook_file.hpp"

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>

#include <xlsxwriter.h>

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

/// A folder open to its owner alone, gone with the object: the library writes to a path.
class PrivateFolder {
  public:
    PrivateFolder() : path_((fs::temp_directory_path() / "quoin-XXXXXX").string()) {
        if (mkdtemp(path_.data()) == nullptr) {
            throw std::runtime_error("no temporary folder can be made");
        }
    }
    PrivateFolder(const PrivateFolder&) = delete;
    PrivateFolder& operator=(const PrivateFolder&) = delete;
    ~PrivateFolder() {
        std::error_code error;
        fs::remove_all(path_, error);
    }
    [[nodiscard]] fs::path file(const char* name) const { return fs::path(path_) / name; }

  private:
    std::string path_;
};

std::string read_bytes(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

class Looks {
  public:
    explicit Looks(lxw_workbook* book) : book_(book) {}

    lxw_format* of(CellLook look) {
        lxw_format*& format = formats_[look];
        if (format == nullptr) format = make(look);
        return format;
    }

  private:
    lxw_format* make(CellLook look) {
        lxw_format* format = workbook_add_format(book_);
        switch (look) {
        case CellLook::title:
            format_set_bold(format);
            format_set_font_size(format, 14);
            break;
        case CellLook::heading:
            format_set_bold(format);
            format_set_bottom(format, LXW_BORDER_THIN);
            break;
        case CellLook::note:
            format_set_italic(format);
            break;
        case CellLook::money:
            format_set_num_format(format, "$#,##0.00;-$#,##0.00");
            break;
        case CellLook::percent:
            format_set_num_format(format, "0.000######\" %\"");
            break;
        case CellLook::number:
            format_set_num_format(format, "General");
            break;
        case CellLook::date:
            format_set_num_format(format, "yyyy-mm-dd");
            break;
        case CellLook::text:
            break;
        }
        return format;
    }

    lxw_workbook* book_;
    std::map<CellLook, lxw_format*> formats_;
};

void write_cell(lxw_worksheet* sheet, const WorkbookCell& cell, lxw_format* look) {
    const auto row = static_cast<lxw_row_t>(cell.row);
    const auto column = static_cast<lxw_col_t>(cell.column);
    if (!cell.text.empty()) {
        worksheet_write_string(sheet, row, column, cell.text.c_str(), look);
        return;
    }
    const double value = std::strtod(cell.value.text().c_str(), nullptr);
    if (cell.formula.empty()) {
        worksheet_write_number(sheet, row, column, value, look);
    } else {
        worksheet_write_formula_num(sheet, row, column, ("=" + cell.formula).c_str(), look, value);
    }
}

void write_sheet(lxw_workbook* book, const WorkbookSheet& from, Looks& looks) {
    lxw_worksheet* sheet = workbook_add_worksheet(book, from.name.c_str());
    if (sheet == nullptr) throw std::runtime_error("no sheet can be added");
    for (std::size_t i = 0; i < from.widths.size(); ++i) {
        const auto column = static_cast<lxw_col_t>(i);
        worksheet_set_column(sheet, column, column, from.widths[i], nullptr);
    }
    worksheet_freeze_panes(sheet, static_cast<lxw_row_t>(from.frozen_rows), 0);
    worksheet_set_landscape(sheet);
    worksheet_fit_to_pages(sheet, 1, 0);
    for (const WorkbookCell& cell : from.cells) write_cell(sheet, cell, looks.of(cell.look));
}

} // namespace

std::string xlsx_bytes(const Workbook& workbook) {
    const PrivateFolder folder;
    const fs::path path = folder.file("workbook.xlsx");
    lxw_workbook* book = workbook_new(path.c_str());
    if (book == nullptr) throw std::runtime_error("no workbook can be made");
    Looks looks(book);
    for (const WorkbookSheet& sheet : workbook.sheets) write_sheet(book, sheet, looks);
    for (const auto& [name, cell] : workbook.names) {
        workbook_define_name(book, name.c_str(), ("=" + cell).c_str());
    }
    if (workbook_close(book) != LXW_NO_ERROR) {
        throw std::runtime_error("the workbook cannot be written: is there room left?");
    }
    return read_bytes(path);
}

} // namespace quoin::apps
