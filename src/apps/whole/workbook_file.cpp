// Writing a workbook through libxlsxwriter, which takes values as binary floating point: the one
// place where figures leave as such. A reader recomputes them from the formulas.
#include "workbook_file.hpp"

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>

#include <xlsxwriter.h>

#include <quoin/render/written_mark.hpp>
#include <quoin/text/problems.hpp>

#include <quoin/inquiry/typed.hpp>

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

/// Where temporary files go: the variables that POSIX and the C++ library know, else /tmp.
std::string temporary_folder() {
    for (const char* name : {"TMPDIR", "TMP", "TEMP", "TEMPDIR"}) {
        const char* const set = std::getenv(name);
        if (set != nullptr && *set != '\0') return set;
    }
    return "/tmp";
}

/// A folder open to its owner alone, gone with the object: the library writes to a path. Nothing is
/// begun where there is no room: the library does not notice each write that fails.
class PrivateFolder {
  public:
    PrivateFolder() : path_((fs::path(temporary_folder()) / "quoin-XXXXXX").string()) {
        if (mkdtemp(path_.data()) == nullptr) {
            refuse(problems::no_temporary_room(temporary_folder(), std::strerror(errno)));
        }
        constexpr std::uintmax_t room = 8U * 1024 * 1024; // many times a workbook and its parts
        std::error_code error;
        const fs::space_info space = fs::space(path_, error);
        if (!error && space.available < room)
            fail(problems::temporary_room_full(temporary_folder()));
    }
    [[noreturn]] void fail(Problem problem) const {
        std::error_code error;
        fs::remove_all(path_, error);
        refuse(std::move(problem));
    }
    PrivateFolder(const PrivateFolder&) = delete;
    PrivateFolder& operator=(const PrivateFolder&) = delete;
    ~PrivateFolder() {
        std::error_code error;
        fs::remove_all(path_, error);
    }
    [[nodiscard]] const std::string& path() const { return path_; }
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
    std::string parts = folder.path(); // of the workbook, while it is made
    lxw_workbook_options options{};
    options.tmpdir = parts.data();
    lxw_workbook* book = workbook_new_opt(path.c_str(), &options);
    if (book == nullptr) throw std::runtime_error("no workbook can be made");
    std::string mark(workbook_mark);
    lxw_doc_properties properties{};
    properties.comments = mark.data();
    workbook_set_properties(book, &properties);
    Looks looks(book);
    for (const WorkbookSheet& sheet : workbook.sheets) write_sheet(book, sheet, looks);
    for (const auto& [name, cell] : workbook.names) {
        workbook_define_name(book, name.c_str(), ("=" + cell).c_str());
    }
    const lxw_error error = workbook_close(book);
    if (error != LXW_NO_ERROR)
        folder.fail(problems::no_temporary_room(temporary_folder(), lxw_strerror(error)));
    return read_bytes(path);
}

} // namespace quoin::apps
