// The first texts of an object, from the parser's events.
#include <quoin/text/leading_texts.hpp>

#include <istream>

#include <nlohmann/json.hpp>

namespace quoin {
namespace {

using Use = std::function<bool(std::string_view, std::string_view)>;

/// Ends the parsing where `use` has enough.
class LeadingTexts : public nlohmann::json_sax<nlohmann::json> {
  public:
    explicit LeadingTexts(const Use& use) : use_(use) {}

    bool null() override { return true; }
    bool boolean(bool) override { return true; }
    bool number_integer(number_integer_t) override { return true; }
    bool number_unsigned(number_unsigned_t) override { return true; }
    bool number_float(number_float_t, const string_t&) override { return true; }
    bool binary(binary_t&) override { return false; }
    bool string(string_t& text) override { return !in_outermost() || use_(name_, text); }
    bool key(string_t& name) override {
        if (in_outermost()) name_ = std::move(name);
        return true;
    }
    bool start_object(std::size_t) override { return open(true); }
    bool start_array(std::size_t) override { return open(false); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool parse_error(std::size_t, const std::string&, const nlohmann::json::exception&) override {
        return false;
    }

  private:
    [[nodiscard]] bool in_outermost() const { return object_ && open_ == 1; }
    bool open(bool object) {
        if (open_++ == 0) object_ = object;
        return true;
    }
    bool close() {
        --open_;
        return true;
    }

    const Use& use_;
    std::string name_;    ///< of the outermost object's member that comes next
    bool object_ = false; ///< whether the outermost is one
    int open_ = 0;        ///< objects and lists that are not closed yet
};

} // namespace

void leading_texts(std::istream& json, const Use& use) {
    LeadingTexts texts(use);
    nlohmann::json::sax_parse(json, &texts);
}

} // namespace quoin
