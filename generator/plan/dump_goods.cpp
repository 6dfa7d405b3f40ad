#include "plan/dump_goods.h"

#include "base/text.h"

namespace loamsheet {
namespace {

std::string number(double v) {
  return ' ' + fixed(v, 3);
}

std::string number(const std::optional<double>& v) {
  return v ? number(*v) : " -";
}

std::string marks_and_cuts(const Plan& plan) {
  std::string out;
  for (const TapeMark& mark : plan.marks) {
    out += "mark " + mark.layer + number(mark.front.v) + number(mark.back.v) + " mm\n";
  }
  for (const Cut& cut : plan.cuts) {
    out += "cut " + cut.use + ' ' + cut.material + ' ' + std::to_string(cut.count) + " x" +
           number(cut.width.v) + number(cut.depth.v) + " mm" +
           (cut.overlap ? " overlap" + number(cut.overlap->v) : "") + '\n';
  }
  return out;
}

std::string doses(const Plan& plan) {
  std::string out;
  for (const DosePlan& dose : plan.doses) {
    out += "dose " + dose.material + number(dose.dose.v * 1000) + " g, spoons" +
           number(dose.teaspoons) + ", nitrogen" + number(dose.nitrogen_mg_l) + " mg/L\n";
  }
  for (const CrewPlan& crew : plan.crew) {
    out += "cultures " + crew.species + number(crew.given) + " of " +
           (crew.suggested ? std::to_string(*crew.suggested) : "-") + '\n';
  }
  return out;
}

std::string loads(const Plan& plan) {
  std::string out = "stand-load" + number(plan.mass.stand_load.low) +
                    number(plan.mass.stand_load.high) + " kg/m2\n";
  if (const auto& s = plan.supports) {
    out += "supports " + std::to_string(s->count) + number(s->spacing.v) + " mm" +
           number(s->load.v) + " kg\n";
  }
  for (const FixedLoad& load : plan.fixed) {
    out += "fixed " + load.id + number(load.pocket.v) + number(load.landing.v) +
           number(load.sum().v) + " kg\n";
  }
  if (const auto& w = plan.water_area) {
    out += "water-area" + number(w->volume.v) + " L, dam" + number(w->dam_length.v) +
           number(w->dam_height.v) + " mm" + number(w->dam.v) + " kg, pane" +
           number(w->pane_load_n) + " N, floor" + number(w->floor_pressure_kpa) + " kPa\n";
  }
  if (const auto& sack = plan.sack) {
    out += "sack " + sack->item + number(sack->mass.v) + " of" + number(sack->limit.v) + " kg\n";
  }
  if (const auto& move = plan.transport) {
    out += "move" + number(move->mass.low.v) + number(move->mass.high.v) + " kg, out " +
           join(move->stones, " ") + number(move->taken_out.v) + " kg\n";
  }
  return out;
}

std::string quote(const Quote& q) {
  std::string out = "quote " + q.currency + '\n';
  for (const QuoteLine& line : q.lines) {
    out += "  " + std::string(name_of(line.group)) + ' ' + line.item + ' ' +
           std::to_string(line.count) + " x" + number(line.size) + ' ' + line.unit + " at " +
           (line.each ? whole_decimal(*line.each, q.digits) : "-") + " = " +
           (line.amount ? decimal(*line.amount, q.digits) : "-") + '\n';
  }
  const auto line = [&](const char* name, Money amount) {
    out += std::string("  ") + name + ' ' + decimal(amount, q.digits) + '\n';
  };
  line("net", q.net), line("tax", q.tax), line("total", q.total);
  line("deposit", q.deposit), line("balance", q.balance);
  return out + "  unpriced " + std::to_string(q.unpriced) + '\n';
}

}  // namespace

std::string dump_goods(const Plan& plan) {
  return marks_and_cuts(plan) + doses(plan) + loads(plan) + (plan.quote ? quote(*plan.quote) : "");
}

}  // namespace loamsheet
