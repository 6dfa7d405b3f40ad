#include "base/finding.h"

#include <iterator>

#include "base/fields.h"

namespace loamsheet {

std::string name_of(Weight weight) {
  switch (weight) {
    case Weight::stop:
      return "stop";
    case Weight::caution:
      return "caution";
    case Weight::note:
      return "note";
  }
  return "";
}

void fields(const Finding& finding, FieldSink& to) {
  to.add("severity", name_of(finding.weight));
  to.add("rule", finding.rule);
  to.add("line", finding.where.line);
  to.add("column", finding.where.column);
  to.sentence({"text"}, "findings." + finding.rule, finding.args);
}

void append(Found& all, Found more) {
  std::move(more.begin(), more.end(), std::back_inserter(all));
}

}  // namespace loamsheet
