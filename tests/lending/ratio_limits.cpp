// The limits on ratios: read, dated, taken over, refused; and the shipped ones as published.
#include <shown.hpp>

#include <quoin/lending/editions.hpp>

#include <quoin/inquiry/desk.hpp>
#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

#include "support/files.hpp"
#include "support/findings.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Percent percent(const char* text) { return Percent(decimal(text)); }

const RatioLimits* shipped(const char* id, const char* day) {
    const auto& programs = six_programs().desk.lending.programs;
    const auto& list = quoin::at(programs, index_of(programs, id).value()).ratios;
    return edition_on(list, {date(day), date(day)}).rule();
}

/// The problems of a program whose ratios are these.
std::string mistakes(const std::string& ratios) {
    const Parsed parsed("{\"ratios\": " + ratios + "}");
    Findings findings;
    Reader reader(parsed.root(), Path{}, findings);
    static_cast<void>(read_ratio_limits(reader));
    reader.finish();
    std::string ids;
    for (const std::string& id : problem_ids(findings)) ids += id + " ";
    return ids;
}

} // namespace

TEST_CASE("Ratios: FHA 31/43, HUD Handbook 4000.1, manual underwriting (second-hand)") {
    const RatioLimits* limits = shipped("fha", "2026-11-24");
    REQUIRE(limits != nullptr);
    CHECK(limits->front == percent("31"));
    CHECK(limits->back == percent("43"));
    CHECK_FALSE(limits->back_automated);
    CHECK(shipped("fha", "2015-09-13") == nullptr);
}

TEST_CASE("Ratios: VA 41 on all debts and none on housing, 38 CFR 36.4340(d) (second-hand)") {
    const RatioLimits* limits = shipped("va", "2026-11-24");
    REQUIRE(limits != nullptr);
    CHECK_FALSE(limits->front);
    CHECK(limits->back == percent("41"));
}

TEST_CASE("Ratios: USDA 29/41, and 34/41 from 5 August 2024, HB-1-3555 chapter 11 (second-hand)") {
    CHECK(shipped("usda", "2024-08-04")->front == percent("29"));
    CHECK(shipped("usda", "2024-08-05")->front == percent("34"));
    CHECK(shipped("usda", "2024-08-05")->back == percent("41"));
}

TEST_CASE("Ratios: conventional 45, 50 automated, Fannie Mae B3-6-02, taken over by adjustable") {
    for (const char* id : {"conventional", "conventional-5-6", "conventional-7-6"}) {
        const RatioLimits* limits = shipped(id, "2026-11-24");
        REQUIRE(limits != nullptr);
        CHECK_FALSE(limits->front);
        CHECK(limits->back == percent("45"));
        CHECK(limits->back_automated == percent("50"));
    }
}

TEST_CASE("Ratios that cannot be meant are refused") {
    const std::string rest = R"("status": "sample", "source": "invented")";
    CHECK(mistakes(R"([{"back": "43", )" + rest + "}]").empty());
    CHECK(mistakes("[{" + rest + "}]") == "member-missing ");
    CHECK(mistakes(R"([{"back": "0", )" + rest + "}]") == "out-of-range ");
    CHECK(mistakes(R"([{"back": "100.1", )" + rest + "}]") == "out-of-range ");
    CHECK(mistakes(R"([{"back": "43", "front": "-1", )" + rest + "}]") == "out-of-range ");
    CHECK(mistakes(R"([{"back": "43", "until": "2026-01-01", "effective": "2026-01-01", )" + rest +
                   "}]") == "dates-reversed ");
    const std::string one = R"({"back": "43", )" + rest + "}";
    CHECK(mistakes("[" + one + ", " + one + "]") == "dates-overlap ");
}

TEST_CASE("Automated underwriting has a ratio of its own, or the same one, or none") {
    const std::string one = "[{\"back\": \"43\", \"status\": \"sample\", \"source\": \"invented\"";
    CHECK(mistakes(one + "}]").empty());
    CHECK(mistakes(one + ", \"automated\": \"same ratio\"}]").empty());
    CHECK(mistakes(one + ", \"automated\": \"no ratio published\"}]").empty());
    CHECK(mistakes(one + ", \"automated\": \"none\"}]") == "not-one-of ");
    CHECK(mistakes(one + ", \"automated\": \"same ratio\", \"back_automated\": \"50\"}]") ==
          "members-conflict ");
}
