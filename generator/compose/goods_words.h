// goods_words: amounts of goods and of money, in words.
#pragma once
#include <string>

#include "compose/compose.h"

namespace loamsheet {

// Loose goods: metric by the litre, in the US by the dry quart.
std::string loose(const Wording&, Litres);

// So much of what is counted in a unit of the stock list: L, kg, m2 or piece. Less than a litre
// comes in cartridges and bottles, not loose.
std::string quantity(const Wording&, double amount, const std::string& unit);

// So much of an item of the pull list; water and sealants are not loose goods.
std::string quantity(const Wording&, const PullItem&, double amount);

// What an item of the pull list is called: a plant and a crew species by the catalogue.
std::string item_name(const ComposeInput&, const PullItem&);

// What tells things of a kind apart: measures of furnishings and lamps, watts; empty when nothing
// is stated.
std::string sizes_of(const ComposeInput&, const PullItem&);

// "EUR 12.50", as exact as the coins of the quote's currency; and the price of one, which may be
// finer than a coin.
std::string money_words(const ComposeInput&, Money);
std::string price_words(const ComposeInput&, Money);

// "8.875 %" and "3.5": with all the digits that were typed.
std::string per_cent(const Ratio&);
std::string plain_number(const Ratio&);

}  // namespace loamsheet
