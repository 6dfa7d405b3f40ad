#include "compose/goods_words.h"

#include "base/text.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

constexpr int all_digits = 12;

std::string in_currency(const ComposeInput& in, std::string digits) {
  const size_t point = digits.find('.');
  if (point != std::string::npos) digits.replace(point, 1, in.wording.say("units.decimal"));
  return in.wording.say("quote.money", {{"currency", in.plan.quote->currency}, {"amount", digits}});
}

double value(const Ratio& r) {
  return static_cast<double>(r.top) / static_cast<double>(r.bottom);
}

}  // namespace

std::string loose(const Wording& w, Litres volume) {
  return w.amount(Arg(volume), "dry");
}

std::string quantity(const Wording& w, double amount, const std::string& unit) {
  if (unit == "L") return amount < 1 ? w.amount(Litres{amount}) : loose(w, Litres{amount});
  if (unit == "kg") return w.amount(Kilograms{amount});
  if (unit == "m2") return w.amount(SquareMetres{amount});
  return w.amount(amount);
}

std::string quantity(const Wording& w, const PullItem& item, double amount) {
  const bool liquid = item.use == "watering" || item.use == "fixing";
  if (liquid && item.unit == "L") return w.amount(Litres{amount});
  return quantity(w, amount, item.unit);
}

std::string item_name(const ComposeInput& in, const PullItem& item) {
  const Shelf& shelf = item.use == "plants" ? in.catalogue.plants : in.catalogue.crew;
  const bool living = item.use == "plants" || item.use == "crew";
  if (living && shelf.has(item.item)) return shelf.at(item.item).common_name;
  return material_name(in.wording, item.item);
}

std::string money_words(const ComposeInput& in, Money amount) {
  return in_currency(in, decimal(amount, in.plan.quote->digits));
}

std::string price_words(const ComposeInput& in, Money amount) {
  return in_currency(in, whole_decimal(amount, in.plan.quote->digits));
}

std::string per_cent(const Ratio& share) {
  return significant(value(share * Ratio{100, 1}), all_digits) + " %";
}

std::string plain_number(const Ratio& number) {
  return significant(value(number), all_digits);
}

}  // namespace loamsheet
