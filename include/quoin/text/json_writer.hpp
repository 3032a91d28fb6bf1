// JsonWriter: JSON as it is told, value by value, straight into text.
//
// Two spaces a level and one value a line: the form of every file and answer.
//
//   JsonWriter json;
//   json.object([&] { json.text("price", "497660.00"); });
//   json.take()  ->  "{\n  \"price\": \"497660.00\"\n}"
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace quoin {

class JsonWriter {
  public:
    /// The name of the member that comes next. Precondition: an object is open, and its last
    /// member has its value.
    void key(std::string_view name);

    /// Bytes that are no UTF-8, such as those of a file's name, are written as U+FFFD.
    void text(std::string_view value);
    void number(std::int64_t value);
    void truth(bool value);
    void null();
    // A member with its value.
    void text(std::string_view name, std::string_view value) {
        key(name);
        text(value);
    }
    void number(std::string_view name, std::int64_t value) {
        key(name);
        number(value);
    }
    void truth(std::string_view name, bool value) {
        key(name);
        truth(value);
    }
    void null(std::string_view name) {
        key(name);
        null();
    }
    /// An object or a list, and what `inside` writes in it.
    template <class F>
    void object(const F& inside) {
        open('{');
        inside();
        close('}');
    }
    template <class F>
    void list(const F& inside) {
        open('[');
        inside();
        close(']');
    }
    template <class F>
    void object(std::string_view name, const F& inside) {
        key(name);
        object(inside);
    }
    template <class F>
    void list(std::string_view name, const F& inside) {
        key(name);
        list(inside);
    }
    /// A literal that is JSON already, such as a number as a file has it.
    void literal(std::string_view json);

    /// What was written. Precondition: all that was opened is closed.
    [[nodiscard]] std::string take();

  private:
    /// What is full is kept as it is until all is taken: an answer of half a megabyte in one text
    /// that grows is copied again and again.
    struct Page {
        std::unique_ptr<char[]> bytes;
        std::size_t used = 0;
    };

    void open(char bracket);
    void close(char bracket);
    void next_place(); ///< the comma, line and indent before a value or a member
    void line();
    void quoted(std::string_view text);
    void put(char c);
    void put(std::string_view text);
    void room(std::size_t bytes); ///< so many are free at `at_` afterwards
    void turn_page(std::size_t bytes);
    void close_page();

    std::vector<Page> full_;
    std::unique_ptr<char[]> page_;
    char* at_ = nullptr; ///< of the page: where the next byte goes
    char* end_ = nullptr;
    std::vector<char> filled_; ///< of each level that is open: whether it holds anything
    bool after_key_ = false;
};

} // namespace quoin
