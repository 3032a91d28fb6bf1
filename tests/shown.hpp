// How quoin's numbers look in the message of a failed test.
#pragma once

#include <catch.hpp>

#include <string>

#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>

template <>
struct Catch::StringMaker<quoin::Money> {
    static std::string convert(quoin::Money amount) { return "$" + amount.text(); }
};
template <>
struct Catch::StringMaker<quoin::Decimal> {
    static std::string convert(quoin::Decimal value) { return value.text(); }
};
template <>
struct Catch::StringMaker<quoin::Rate> {
    static std::string convert(quoin::Rate rate) { return rate.text() + " %"; }
};
