#include "base/fields.h"
#include "plan/shop/shop.h"

namespace loamsheet {

void fields(const LiftMultipliers& m, FieldSink& to) {
  to.add("hm", m.horizontal);
  to.add("vm", m.vertical);
  to.add("dm", m.distance);
  to.add("am", m.asymmetry);
  to.add("fm", m.frequency);
  to.add("cm", m.coupling);
}

void fields(const SackLift& sack, FieldSink& to) {
  to.add("item", sack.item);
  to.add("mass", unit::kg, sack.mass);
  to.add("index", sack.index);
  to.add("limit", unit::kg, sack.limit);
  to.add("people", sack.people);
  to.object("multipliers", multipliers(sack.task));
}

void fields(const Pack& pack, FieldSink& to) {
  to.add("size", pack.size);
  to.add("count", pack.count);
  to.add("sold", pack.sold);
  to.add("sold_unit", pack.sold_unit);
  to.add("price", pack.price);
  to.add("shelf", pack.shelf);
}

void fields(const PullItem& item, bool stocked, FieldSink& to) {
  to.add("item", item.item);
  to.add("need", item.need);
  to.add("unit", item.unit);
  to.add("for", item.use);
  if (!stocked) return;
  to.list("packs", item.packs);
  to.add("price", item.price);
  to.add("missing", item.missing);
  to.add("left_over", item.left_over);
}

// Labour and delivery have no packs.
void fields(const QuoteLine& line, FieldSink& to) {
  const bool packed = line.count > 0;
  to.add("group", name_of(line.group));
  to.add_known("item", line.item);
  to.add("count", packed ? std::optional(line.count) : std::nullopt);
  to.add("size", packed ? std::optional(line.size) : std::nullopt);
  to.add("unit", packed ? std::optional(line.unit) : std::nullopt);
  to.add("hours", line.hours);
  to.add("each", line.each);
  to.add("amount", line.amount);
}

void fields(const Quote& quote, FieldSink& to) {
  to.add("currency", quote.currency);
  to.list("lines", quote.lines);
  for (QuoteGroup group : {QuoteGroup::materials, QuoteGroup::plants, QuoteGroup::crew,
                           QuoteGroup::labour, QuoteGroup::delivery}) {
    to.add(name_of(group), subtotal(quote, group));
  }
  to.add("net", quote.net);
  to.add("tax_share", quote.tax_share);
  to.add("tax", quote.tax);
  to.add("total", quote.total);
  to.add("deposit_share", quote.deposit_share);
  to.add("deposit", quote.deposit);
  to.add("balance", quote.balance);
  to.add("partial", quote.partial());
  to.add("unpriced", quote.unpriced);
  to.add("valid_days", quote.valid_days);
  to.add("valid_until", quote.valid_until);
}

void fields_of_lift(const Shopped& plan, FieldSink& to) {
  if (!plan.lift) return;
  const LiftPlan& lift = *plan.lift;
  to.open({"lift"});
  to.add("empty_index", lift.empty_index);
  to.add("limit", unit::kg, lift.limit);
  to.add("people", lift.people);
  to.add("by_hand", lift.by_hand);
  to.object("multipliers", multipliers(lift.task));
  to.object("sack", plan.sack);
  to.close();
}

void fields_of_list(const Build& build, const Shopped& plan, FieldSink& to) {
  const bool stocked = build.stock.has_value();
  to.each("pull_list", plan.pull_list, [&](const PullItem& item) { fields(item, stocked, to); });
  to.add("tools", plan.tools);
}

}  // namespace loamsheet
