// Writing over files: quoin's own are replaced, everybody else's only with --force.
#include <shown.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include <sys/stat.h>

#include "apps/command_line.hpp"
#include "apps/written_file.hpp"

using namespace quoin;
using namespace quoin::apps;

namespace {

namespace fs = std::filesystem;

const std::string folder = QUOIN_SOURCE_DIR "/examples/first-home";
const std::string rates = QUOIN_SOURCE_DIR "/rates";

class Folder {
  public:
    Folder() {
        std::string name = fs::temp_directory_path() / "quoin-test-XXXXXX";
        if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for a test");
        path_ = name;
        for (const char* file : {"buyer.json", "pricebook.json"}) {
            fs::copy(fs::path(folder) / file, path_ / file);
        }
    }
    ~Folder() { fs::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::string file(const std::string& name) const { return path_ / name; }
    [[nodiscard]] std::string bytes(const std::string& name) const {
        std::ifstream in(path_ / name, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), {}};
    }
    void write(const std::string& name, const std::string& text) const {
        std::ofstream(path_ / name, std::ios::binary) << text;
    }
    [[nodiscard]] std::size_t files() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(path_), fs::directory_iterator()));
    }

    Result sheet(const std::string& name, bool force = false) const {
        return ask({"sheet", file("buyer.json"), "-o", file(name)}, force);
    }
    Result workbook(const std::string& name, bool force = false) const {
        return ask({"recheck", file("buyer.json"), "--scenario", "Conventional, 5% down",
                    "--workbook", file(name)},
                   force);
    }

  private:
    static Result ask(std::vector<std::string> words, bool force) {
        words.insert(words.end(), {"--rates", rates});
        if (force) words.emplace_back("--force");
        return run(words, &apps::all_of_it);
    }
    fs::path path_;
};

bool tells(const Result& result, const std::string& id) {
    return result.code == input_wrong && result.errors.find("[" + id + "]") != std::string::npos;
}

} // namespace

TEST_CASE("What quoin wrote it replaces, what somebody else wrote it does not") {
    const Folder here;
    using Way = Result (Folder::*)(const std::string&, bool) const;
    for (const auto& [way, name] : {std::pair<Way, const char*>{&Folder::sheet, "a.html"},
                                    std::pair<Way, const char*>{&Folder::workbook, "a.xlsx"}}) {
        CAPTURE(name);
        INFO((here.*way)(name, false).errors);
        REQUIRE((here.*way)(name, false).code == done);
        CHECK(bears_mark(here.bytes(name)));
        CHECK((here.*way)(name, false).code == done); // over its own
        for (const char* theirs : {"my notes", "", "<!doctype html>\n<title>mine</title>", "PK"}) {
            here.write(name, theirs);
            const std::size_t files = here.files();
            CHECK(tells((here.*way)(name, false), "file-not-ours"));
            CHECK(here.bytes(name) == theirs);
            CHECK(here.files() == files); // nothing is left beside it
        }
        CHECK((here.*way)(name, true).code == done);
        CHECK(bears_mark(here.bytes(name)));
        fs::remove(here.file(name));
    }
}

TEST_CASE("An inquiry is not written over, whatever it is called") {
    const Folder here;
    const std::string was = here.bytes("buyer.json");
    CHECK(tells(here.workbook("buyer.json"), "payment-input"));
    CHECK(tells(here.workbook("buyer.json", true), "payment-input"));
    CHECK(tells(here.sheet("buyer.json", true), "payment-input"));
    CHECK(here.bytes("buyer.json") == was);
    here.write("b.xlsx", was);
    CHECK(tells(here.workbook("b.xlsx"), "file-not-ours"));
    CHECK(here.bytes("b.xlsx") == was);
}

TEST_CASE("A link or a folder of that name is not quoin's") {
    const Folder here;
    REQUIRE(here.sheet("a.html").code == done);
    fs::create_symlink(here.file("a.html"), here.file("link.html"));
    CHECK(tells(here.sheet("link.html"), "file-not-ours"));
    fs::create_directory(here.file("folder.html"));
    CHECK(tells(here.sheet("folder.html", true), "file-unwritable"));
}

TEST_CASE("What is written is its owner's alone") {
    const Folder here;
    REQUIRE(here.sheet("a.html").code == done);
    struct stat made {};
    REQUIRE(stat(here.file("a.html").c_str(), &made) == 0);
    CHECK((made.st_mode & 0777U) == 0600U);
    CHECK(made.st_nlink == 1);
}

TEST_CASE("A temporary folder that is not there is named as what is wrong") {
    const Folder here;
    setenv("TMPDIR", here.file("gone").c_str(), 1);
    const Result result = here.workbook("a.xlsx");
    unsetenv("TMPDIR");
    CHECK(tells(result, "no-temporary-room"));
    CHECK(result.errors.find("gone") != std::string::npos);
    CHECK_FALSE(fs::exists(here.file("a.xlsx")));
}

TEST_CASE("Bytes that only look like an archive bear no mark") {
    for (const std::string& bytes :
         {std::string("PK\5\6"),
          std::string("PK") + std::string(40, '\xff') + "PK\5\6" + std::string(30, '\xff'),
          std::string("PK\5\6") + std::string(18, '\0'), std::string("Written by quoin")}) {
        CHECK_FALSE(bears_mark(bytes));
    }
}
