// The words of a builder's money, shared by text and JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/answers/credit.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// What of the loan may be paid in cash: its fee by its name, or the single premium.
[[nodiscard]] std::string fee_name(const CreditScenario& s, const Catalogue& say);
/// The name of a use for one loan: what its fee or premium is called.
[[nodiscard]] std::string use_name(const CreditPure& pure, const CreditScenario& s,
                                   const Catalogue& say);
/// "2-1", "1-0"; empty where there is none.
[[nodiscard]] std::string buydown_name(const std::vector<Percent>& steps);
/// Why a use cannot be had.
[[nodiscard]] std::string why_not(const CreditPure& pure, const CreditAsk& ask,
                                  const Catalogue& say);

/// "7 years", or "the whole loan" where it ends no later.
[[nodiscard]] std::string years_words(int years, const CreditScenario& s, const Catalogue& say);
/// What each part of it goes to.
[[nodiscard]] std::string uses_words(const CreditMix& mix, const CreditScenario& s,
                                     const Catalogue& say);

} // namespace quoin
