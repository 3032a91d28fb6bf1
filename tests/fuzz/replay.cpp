// Replays seeds and finds without libFuzzer, writes seeds out, and makes a find smaller.
//
//   fuzz-replay TARGET [FILE...]      the target's seeds, and its finds in tests/fuzz/finds; or
//   files fuzz-replay --seeds TARGET DIR    writes the seeds into a folder fuzz-replay --shrink
//   TARGET FILE  leaves out what the find does not need
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

#include "questions.hpp"
#include "shipped.hpp"
#include <quoin/questions/questions.hpp>
#include <quoin/text/value.hpp>

namespace {

using namespace quoin;
using namespace quoin::fuzz;
namespace fs = std::filesystem;

/// Processor seconds for one input, in the build of the tests.
constexpr double slow = 5;

std::string read(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// What is wrong with an input; empty where it comes back as it should.
std::string wrong_with(const Target& target, const std::string& bytes) {
    try {
        run_timed(target, bytes, slow);
        return "";
    } catch (const std::exception& error) {
        return error.what();
    }
}

int replay(const Target& target, const std::vector<Seed>& inputs) {
    int failed = 0;
    for (const Seed& input : inputs) {
        std::fprintf(stderr, "%s: %s", target.name.data(), input.name.c_str());
        const std::string wrong = wrong_with(target, input.bytes);
        std::fprintf(stderr, "%s%s\n", wrong.empty() ? "" : ": FIND: ", wrong.c_str());
        if (!wrong.empty()) ++failed;
    }
    std::printf("%s: %zu inputs, %d finds\n", target.name.data(), inputs.size(), failed);
    return failed == 0 ? 0 : 1;
}

std::vector<Seed> seeds_and_finds(const Target& target) {
    std::vector<Seed> inputs = target.seeds();
    const fs::path folder = fs::path(QUOIN_SOURCE_DIR) / "tests/fuzz/finds" / target.name;
    std::set<fs::path> finds;
    if (fs::is_directory(folder)) {
        for (const auto& entry : fs::directory_iterator(folder)) finds.insert(entry.path());
    }
    for (const fs::path& find : finds) inputs.push_back({find.filename().string(), read(find)});
    return inputs;
}

/// A question that the server answers and no target asks would never be held to anything.
bool asks_every_question() {
    const auto names = asked();
    bool all = true;
    for (const Question& question : questions()) {
        if (question.name == "workbook") continue; // what recheck's workbook is written from
        if (std::find(names.begin(), names.end(), question.name) != names.end()) continue;
        std::printf("no target asks \"%s\" (tests/fuzz/questions.cpp)\n", question.name.data());
        all = false;
    }
    return all;
}

/// How an input ends in a process of its own: its words, or the signal that ended it.
std::string ending(const Target& target, const std::string& bytes) {
    int ends[2];
    if (pipe(ends) != 0) return "no pipe";
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        const std::string wrong = wrong_with(target, bytes).substr(0, 200);
        static_cast<void>(!write(ends[1], wrong.data(), wrong.size()));
        _exit(0);
    }
    close(ends[1]);
    std::string words;
    char room[256];
    for (ssize_t got = 0; (got = ::read(ends[0], room, sizeof room)) > 0;) {
        words.append(room, static_cast<std::size_t>(got));
    }
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    if (WIFSIGNALED(status)) return "signal " + std::to_string(WTERMSIG(status));
    if (WEXITSTATUS(status) != 0) return "exit " + std::to_string(WEXITSTATUS(status));
    return words.rfind("took ", 0) == 0 ? "took" : words;
}

class Shrinking {
  public:
    Shrinking(const Target& target, Document document, std::string ends)
        : target_(target), document_(std::move(document)), ends_(std::move(ends)) {}

    std::string smallest() {
        while (pass(document_.root)) {
        }
        return write_json(document_.root);
    }

  private:
    bool still_fails() { return ending(target_, write_json(document_.root)) == ends_; }

    /// Leaves out one member or item after the other where the find stays one.
    bool pass(Value& value) {
        bool smaller = false;
        for (std::size_t i = value.items.size(); i-- > 0;) {
            const Value before = value;
            value.items.erase(value.items.begin() + static_cast<std::ptrdiff_t>(i));
            if (!value.keys.empty()) {
                value.keys.erase(value.keys.begin() + static_cast<std::ptrdiff_t>(i));
            }
            if (still_fails()) {
                smaller = true;
                continue;
            }
            value = before;
            if (pass(value.items[i])) smaller = true;
        }
        return smaller;
    }

    const Target& target_;
    Document document_;
    std::string ends_;
};

int shrink(const Target& target, const fs::path& file) {
    const std::string bytes = read(file);
    const std::string ends = ending(target, bytes);
    Findings findings;
    Document document = document_of(bytes, findings);
    if (ends.empty() || !findings.none()) {
        std::fprintf(stderr, "%s: %s\n", file.c_str(), ends.empty() ? "no find" : "no JSON");
        return 1;
    }
    std::fprintf(stderr, "%s: %s\n", file.c_str(), ends.c_str());
    std::printf("%s\n", Shrinking(target, std::move(document), ends).smallest().c_str());
    return 0;
}

int write_seeds(const Target& target, const fs::path& folder) {
    fs::create_directories(folder);
    for (const Seed& seed : target.seeds()) {
        std::string name = seed.name;
        std::replace(name.begin(), name.end(), '/', '-');
        std::ofstream(folder / name, std::ios::binary) << seed.bytes;
    }
    return 0;
}

int replay_all() {
    bool good = asks_every_question();
    for (const Target& target : targets()) {
        if (replay(target, seeds_and_finds(target)) != 0) good = false;
    }
    return good ? 0 : 1;
}

int explain() {
    std::fprintf(stderr, "fuzz-replay [--seeds | --shrink] TARGET [FILE...]; targets:\n");
    for (const Target& each : targets()) {
        std::fprintf(stderr, "  %-12s %s\n", each.name.data(), each.what.data());
    }
    return 2;
}

int list_targets() {
    for (const Target& each : targets()) std::printf("%s\n", each.name.data());
    return 0;
}

} // namespace

int main(int count, char** arguments) {
    std::vector<std::string> words(arguments + 1, arguments + count);
    if (words.empty()) return replay_all();
    if (words.front() == "--targets") return list_targets();
    std::string what;
    if (words.front().rfind("--", 0) == 0) {
        what = words.front();
        words.erase(words.begin());
    }
    const Target* target = words.empty() ? nullptr : find_target(words.front());
    if (target == nullptr || (!what.empty() && words.size() != 2)) return explain();
    if (what == "--seeds") return write_seeds(*target, words[1]);
    if (what == "--shrink") return shrink(*target, words[1]);
    if (words.size() == 1) return replay(*target, seeds_and_finds(*target));
    std::vector<Seed> inputs;
    for (std::size_t i = 1; i < words.size(); ++i) inputs.push_back({words[i], read(words[i])});
    return replay(*target, inputs);
}
