// The net present value of advances and payments at a rate: in fixed point with a known error, and
// exactly where that does not decide.
#pragma once

#include <cstdint>
#include <vector>

#include <boost/multiprecision/cpp_int.hpp>

#include <quoin/loan/actuarial.hpp>

namespace quoin {

/// A yearly rate is looked at in units of a hundred-millionth of a percent.
inline constexpr std::int64_t units_per_percent = 100'000'000;

class NetValue {
  public:
    using Fixed = boost::multiprecision::uint512_t; ///< cents x 2^124

    /// What the net advances or the net payments are worth at a rate, and how fast that falls as
    /// the rate of a unit-period rises. Each is at most `slack` below the true figure.
    struct Side {
        Fixed worth;
        Fixed fall;
    };
    struct Sides {
        Side advances;
        Side payments;
    };

    explicit NetValue(const ActuarialProblem& problem);

    /// Of the net flows in time order. With one there is at most one rate: over the discount at the
    /// change, every earlier flow rises with the rate and every later one falls.
    [[nodiscard]] int sign_changes() const { return sign_changes_; }

    [[nodiscard]] Sides at(std::int64_t units) const;
    [[nodiscard]] const Fixed& slack() const { return slack_; }
    /// What a fall at one speed comes to over so many units of yearly rate; raised to the next bit.
    [[nodiscard]] Fixed fall_over(const Fixed& speed, std::int64_t units) const;

    /// +1 where the advances are worth more than the payments, 0 where exactly as much.
    [[nodiscard]] int sign(std::int64_t units) const;
    [[nodiscard]] int exact_sign(std::int64_t units) const;

  private:
    /// The net of all amounts of one moment; payments are negative.
    struct NetFlow {
        int periods = 0;
        Ratio fraction;
        Money amount;
    };
    /// Net flows with one fraction, by whole unit-periods: [begin, end) of flows_.
    struct Group {
        std::size_t begin = 0;
        std::size_t end = 0;
    };
    struct RateFraction;

    static bool is_earlier(const NetFlow& a, const NetFlow& b);
    static bool has_less_fraction(const NetFlow& a, const NetFlow& b);
    static std::vector<NetFlow> each_flow(const ActuarialProblem& problem);
    void keep_net(const std::vector<NetFlow>& timed);
    void make_groups();
    void set_slack();
    [[nodiscard]] Sides group_at(const Group& group, const RateFraction& rate) const;

    Ratio periods_per_year_;
    std::vector<NetFlow> flows_;
    std::vector<Group> groups_;
    Fixed slack_;
    int sign_changes_ = 0;
    int last_period_ = 0;
};

} // namespace quoin
