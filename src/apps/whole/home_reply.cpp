// Reading the inquiry of a request as a file, for as long as it is taken home.
#include "home_reply.hpp"

#include <filesystem>

#include <quoin/inquiry/typed.hpp>
#include <quoin/text/problems.hpp>

#include "../take_home/edited.hpp"
#include "../take_home/home_file.hpp"
#include "../take_home/written_folder.hpp"
#include "../wire/media_types.hpp"
#include "../wire/option_check.hpp"
#include "../wire/replies.hpp"

namespace quoin::apps {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view take_home_name = take_home_path.substr(5); // behind "/api/"

std::vector<std::string> names_of_all() {
    std::vector<std::string> names;
    for (const auto& what : codes<Private>) names.emplace_back(what.code);
    return names;
}

/// The options that the path takes, as a question has them.
const Question& as_question() {
    static const Question question = {
        take_home_name,
        "",
        "",
        {{"with", "what goes along of the buyer's money: score, income, debts, cash",
          QuestionOption::Kind::list}},
        {Form::html},
        nullptr};
    return question;
}

/// The inquiry as a file, whose price book is the one of that id where the cases are.
std::string with_book_at(const std::string& body, const fs::path& folder) {
    Findings findings;
    Document document = parse_json(std::make_shared<const Source>("inquiry", body), findings);
    if (!findings.none()) throw Refused(std::move(findings));
    const std::string id = text_in(document.root, "price_book");
    set(document.root, "price_book", text_of_value((fs::absolute(folder) / id).string()));
    return write_json(document.root);
}

std::set<Private> ticked(const Given& given) {
    std::set<Private> with;
    for (const std::string& name : given.all("with")) {
        const auto what = meaning_in(codes<Private>, name);
        if (!what) refuse(problems::http_option_unknown(take_home_name, name, {}, names_of_all()));
        with.insert(*what);
    }
    return with;
}

} // namespace

void reply_home_file(const HttpRequest& request, const Cases& cases, HttpResponse& response) {
    check_given(as_question(), request.given);
    const Desk* desk = nullptr;
    static_cast<void>(cases.read(request.body, response.language, desk)); // refuses what is wrong
    const FolderForAWhile folder;
    write_folder(folder.path(), {{"inquiry.json", with_book_at(request.body, cases.folder())}});
    const TakenHome taken = take_home({.inquiry = folder.path() + "/inquiry.json",
                                       .rates = cases.rates(),
                                       .language = response.language,
                                       .with = ticked(request.given)});
    reply(response, home_file(taken, response.language, "home.html"), html_type);
}

} // namespace quoin::apps
