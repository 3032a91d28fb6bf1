// Where a request ends: whatever comes, byte by byte.
#include <shown.hpp>

#include "apps/whole/server_framing.hpp"
#include "apps/whole/server_requests.hpp"

using namespace quoin;
using namespace quoin::apps;

namespace {

using State = Framing::State;

Framing framing(std::string_view sent) {
    std::size_t looked = 0;
    return framing_of(sent, looked);
}

std::string post(const std::string& lines) {
    return "POST /api/quote HTTP/1.1\r\nHost: x\r\n" + lines + "\r\n";
}

} // namespace

TEST_CASE("A request ends with its head, or with the body that its one length says") {
    const std::string get = "GET / HTTP/1.1\r\nHost: x\r\n\r\n";
    CHECK(framing(get).size == get.size());
    CHECK(framing(get + "GET /next").size == get.size());
    for (const char* length :
         {"Content-Length: 3\r\n", "content-length:3\r\n", "CONTENT-LENGTH:  3 \r\n"}) {
        const std::string head = post(length);
        CAPTURE(length);
        CHECK(framing(head + "ab").state == State::in_body);
        CHECK(framing(head + "abc").state == State::whole);
        CHECK(framing(head + "abcd").size == head.size() + 3);
    }
}

TEST_CASE("A length that is not one, not clear or above the limit leaves the body out") {
    for (const std::string& lines :
         {std::string("Content-Length: 3\r\nContent-Length: 3\r\n"),
          std::string("Content-Length: -3\r\n"), std::string("Content-Length: 3x\r\n"),
          std::string("Content-Length:\r\n"), std::string("Content-Length : 3\r\n"),
          std::string("X-Content-Length: 3\r\n"),
          "Content-Length: " + std::to_string(largest_body + 1) + "\r\n",
          std::string("Content-Length: 99999999999999999999999\r\n")}) {
        const std::string head = post(lines);
        CAPTURE(lines);
        CHECK(framing(head + "abc").state == State::whole);
        CHECK(framing(head + "abc").size == head.size());
    }
    const std::string most = post("Content-Length: " + std::to_string(largest_body) + "\r\n");
    CHECK(framing(most).state == State::in_body);
}

TEST_CASE("It does not matter in which pieces a request comes") {
    const std::string head = post("Content-Length: 2\r\n");
    const std::string all = head + "{}";
    std::size_t looked = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Framing now = framing_of(std::string_view(all).substr(0, i), looked);
        CHECK(now.state == (i < head.size() ? State::in_head : State::in_body));
    }
    CHECK(framing_of(all, looked).state == State::whole);
}

TEST_CASE("What is no request ends, too") {
    CHECK(framing("\r\n\r\n").state == State::whole);
    CHECK(framing(std::string(largest_head + 1, 'x')).state == State::whole);
    CHECK(framing(std::string(largest_head, 'x')).state == State::in_head);
    CHECK(framing("GET / HTTP/1.1\n\n").state ==
          State::in_head); // the parser's empty line has both
}
