#include "compose/goods_words.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

constexpr QuoteGroup groups[] = {QuoteGroup::materials, QuoteGroup::plants, QuoteGroup::crew,
                                 QuoteGroup::labour, QuoteGroup::delivery};

std::string group_name(const ComposeInput& in, QuoteGroup group) {
  return in.wording.say(std::string("quote.") + name_of(group));
}

bool has(const Quote& quote, QuoteGroup group) {
  for (const QuoteLine& line : quote.lines) {
    if (line.group == group) return true;
  }
  return false;
}

std::string name_of_item(const ComposeInput& in, const QuoteLine& line) {
  if (line.item.empty()) return group_name(in, line.group);
  PullItem item;
  item.item = line.item, item.use = name_of(line.group);
  return capitalised(item_name(in, item));
}

std::string how_many(const ComposeInput& in, const QuoteLine& line) {
  const Wording& w = in.wording;
  if (line.hours) return w.say("quote.hours", {{"hours", plain_number(*line.hours)}});
  if (line.count == 0) return w.say("sheet.nothing");
  if (line.unit == "piece" && line.size == 1) return w.amount(line.count);
  return w.say("quote.packs", {{"count", line.count}, {"size", quantity(w, line.size, line.unit)}});
}

std::vector<Words> line_row(const ComposeInput& in, const QuoteLine& line) {
  const Wording& w = in.wording;
  return {plain(name_of_item(in, line)), plain(how_many(in, line)),
          plain(line.each ? price_words(in, *line.each) : w.say("sheet.nothing")),
          plain(line.amount ? money_words(in, *line.amount) : w.say("quote.no-price"))};
}

// Every line of goods, labour and delivery, with a sum for each group of more than one.
Table lines_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  const Quote& quote = *in.plan.quote;
  Table table;
  table.columns = {{w.say("quote.what"), false, 4},
                   {w.say("quote.how-many"), true, 2},
                   {w.say("quote.each"), true, 2},
                   {w.say("quote.amount"), true, 2}};
  for (const QuoteLine& line : quote.lines) table.rows.push_back(line_row(in, line));
  return table;
}

// The sums, and how each follows from those before it.
Table sums_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  const Quote& q = *in.plan.quote;
  Table table;
  table.columns = {{w.say("quote.sum"), false, 3}, {w.say("quote.amount"), true, 1}};
  const auto add = [&](const std::string& name, Money amount, bool heavy = false) {
    const std::string text = money_words(in, amount);
    table.rows.push_back({heavy ? bold(name) : plain(name), heavy ? bold(text) : plain(text)});
  };
  for (QuoteGroup group : groups) {
    if (has(q, group)) add(group_name(in, group), subtotal(q, group));
  }
  add(w.say("quote.net"), q.net);
  add(w.say("quote.tax", {{"share", per_cent(q.tax_share)}}), q.tax);
  add(w.say(q.partial() ? "quote.total-partial" : "quote.total"), q.total, true);
  add(w.say("quote.deposit", {{"share", per_cent(q.deposit_share)}}), q.deposit);
  add(w.say("quote.balance"), q.balance);
  return table;
}

std::string validity(const ComposeInput& in) {
  const Quote& q = *in.plan.quote;
  if (q.valid_until) return in.wording.say("quote.valid-until", {{"date", *q.valid_until}});
  if (q.valid_days) return in.wording.say("quote.valid-days", {{"days", *q.valid_days}});
  return in.wording.say("quote.valid-open");
}

// What the total leaves out, by name.
void add_partial(const ComposeInput& in, std::vector<Block>& blocks) {
  const Quote& q = *in.plan.quote;
  if (!q.partial()) return;
  std::vector<std::string> names;
  for (const QuoteLine& line : q.lines) {
    if (!line.amount) names.push_back(name_of_item(in, line));
  }
  Callout callout{Callout::Kind::caution, in.wording.say("quote.partial"), {}};
  callout.lines.push_back(
      plain(names.empty()
                ? in.wording.say("quote.partial-count", {{"count", q.unpriced}})
                : in.wording.say("quote.partial-names", {{"names", listed(in.wording, names)}})));
  blocks.push_back(std::move(callout));
}

void add_acceptance(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  blocks.push_back(Heading{2, w.say("quote.acceptance")});
  blocks.push_back(Paragraph{
      plain(w.say("quote.accept", {{"reference", in.build.identity.reference},
                                   {"revision", in.build.identity.revision},
                                   {"total", money_words(in, in.plan.quote->total)},
                                   {"deposit", money_words(in, in.plan.quote->deposit)}})),
      false});
  for (const char* blank : {"quote.name", "quote.signature", "quote.date"}) {
    blocks.push_back(Blank{plain(w.say(blank))});
  }
}

// A copy without the single lines of goods has only the sums.
bool itemised(const Quote& quote) {
  for (const QuoteLine& line : quote.lines) {
    if (!line.item.empty()) return true;
  }
  return false;
}

}  // namespace

Part quote_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"quote", w.say("sheet.part-quote"), false, {}};
  part.blocks.push_back(Heading{1, w.say("quote.heading")});
  part.blocks.push_back(Paragraph{plain(validity(in)), false});
  add_partial(in, part.blocks);
  if (itemised(*in.plan.quote)) {
    part.blocks.push_back(Heading{2, w.say("quote.lines")});
    part.blocks.push_back(lines_table(in));
  }
  part.blocks.push_back(Heading{2, w.say("quote.sums")});
  part.blocks.push_back(sums_table(in));
  part.blocks.push_back(Paragraph{plain(w.say("quote.rounding")), true});
  part.blocks.push_back(Paragraph{plain(w.say("quote.left-out")), true});
  add_acceptance(in, part.blocks);
  return part;
}

}  // namespace loamsheet
