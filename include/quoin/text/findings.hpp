// What is wrong with a person's input: each problem with its place, what it is, and the values that
// its sentences are made of (words/problem_words.hpp). Problems are collected and reported
// together.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/decimal.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/wanted.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

enum class ProblemId : std::uint8_t; ///< problems.hpp lists them

/// What stood where something else was expected.
struct FoundValue {
    enum class Kind : std::uint8_t { nothing, null, list, object, text, literal };

    Kind kind = Kind::nothing;
    std::string literal; ///< of a text, a number, true or false; short enough to be told

    friend bool operator==(const FoundValue&, const FoundValue&) = default;
};

/// What a thing of a price book or of lending data is; a language has its words.
enum class Noun : std::uint8_t {
    area,
    choice,
    drawn_part,
    elevation,
    floor,
    incentive,
    level,
    lot,
    plan_measure,
    option,
    place,
    plan,
    price_book,
    program,
    rate_sheet,
    sound_price_book,
    stage,
};
inline constexpr Noun last_noun = Noun::stage;

/// What a file or a folder that is not there was to be.
enum class FileMeant : std::uint8_t {
    file,
    inquiry,
    price_book,
    apr_problem,
    lots,
    drawing,
    site_map,
    picture,
    lending_data,
    schema,
    lending_folder,
    price_book_folder,
};
inline constexpr FileMeant last_file_meant = FileMeant::price_book_folder;

enum class LotStatus; ///< of a price book

/// The name that was perhaps meant; empty where none is near.
struct NearName {
    std::string name;

    friend bool operator==(const NearName&, const NearName&) = default;
};

/// What in a price book a problem can be about.
enum class Subject : std::uint8_t { option, plan, lot, incentive };
template <>
inline constexpr auto codes<Subject> = coded<Subject>({{Subject::option, "option"},
                                                       {Subject::plan, "plan"},
                                                       {Subject::lot, "lot"},
                                                       {Subject::incentive, "incentive"}});

/// A thing of a price book by its id, and what sentences call it.
struct About {
    Subject what = Subject::option;
    std::string id;
    std::string told;

    friend bool operator==(const About&, const About&) = default;
};

/// One of the values that the sentences of a problem are made of. A person's own text is short and
/// printable in it.
using Argument =
    std::variant<std::string, std::int64_t, Decimal, Date, FoundValue, Noun, NearName, About,
                 std::vector<std::string>, FileMeant, LotStatus, WhyNot, Wanted>;

struct Problem {
    ProblemId id{};
    std::string file;                ///< empty where the input is no file
    int line = 0;                    ///< from 1; 0 where unknown
    int column = 0;                  ///< from 1
    int width = 0;                   ///< bytes to underline
    std::string excerpt;             ///< the line itself, or the part of it around the place
    int excerpt_from = 0;            ///< bytes of the line cut off before the excerpt
    std::string path;                ///< JSON Pointer of the value, such as /options/3/price
    std::vector<Argument> arguments; ///< in the order that problems.hpp gives them in
};

class Findings {
  public:
    /// Keeps the first hundred; then says once that there are more, and keeps no others.
    void add(Problem problem);
    /// Whether another problem would not be told.
    [[nodiscard]] bool full() const { return full_; }
    [[nodiscard]] bool none() const { return problems_.empty(); }
    [[nodiscard]] const std::vector<Problem>& problems() const { return problems_; }
    /// Moves another's problems behind these.
    void take(Findings&& other);

  private:
    std::vector<Problem> problems_;
    bool full_ = false;
};

/// Thrown where input cannot be used; carries everything that was found.
class Refused {
  public:
    explicit Refused(Findings findings) : findings_(std::move(findings)) {}
    [[nodiscard]] const Findings& findings() const { return findings_; }

  private:
    Findings findings_;
};

/// The thing that a problem is about, or nothing: the first that its sentences name.
[[nodiscard]] std::optional<About> about(const Problem& problem);

/// The candidate closest to a mistyped name, or empty where none is near.
[[nodiscard]] std::string nearest(std::string_view name,
                                  const std::vector<std::string>& candidates);

} // namespace quoin
