#include "plan/light/findings_uv.h"

#include <algorithm>

#include "plan/light/constants.h"
#include "plan/light/lamp_remedy.h"
#include "plan/light/uv_exposure.h"

namespace loamsheet {
namespace {

bool too_strong(const UvPlan& uv) {
  return uv.basking > uv.most;
}

bool too_weak(const UvPlan& uv) {
  return uv.gradient.high < uv.mean.low;
}

bool no_shade(const UvPlan& uv) {
  return uv.gradient.low > uv.mean.high;
}

// All animals' UV is as it should be; that is what a change must come to.
bool all_kept(const Build& build, const UvField& field) {
  for (size_t i = 0; i < build.kept.size(); ++i) {
    if (!has_uv_zone(build.kept[i].facts)) continue;
    const UvPlan uv = uv_exposure(build, field, i);
    if (too_strong(uv) || too_weak(uv) || no_shade(uv)) return false;
  }
  return true;
}

std::vector<LampMend::Kind> kinds_against(bool weak) {
  using enum LampMend::Kind;
  if (weak) return {hang_lower, move_back, move_forward, move_left, move_right, stronger};
  return {hang_higher, move_left, move_right, move_back, move_forward, weaker};
}

Finding missed(const Build& build, const UvPlan& uv, Weight weight, const char* rule) {
  const KeptAnimal& animal = build.kept[uv.animal];
  const UvField field(build);
  const auto holds = [&](const Lamps& lamps) { return all_kept(build, field.under(lamps)); };
  const auto mend = least_mend(build, {kinds_against(too_weak(uv)), is_uv, holds});
  Finding finding{
      weight, rule, animal.where, {{"animal", animal.facts.name}, {"zone", uv.zone.low}}};
  for (auto& arg : mend ? mend_args(*mend, build.lamps) : no_mend("none-uv")) {
    finding.args.push_back(std::move(arg));
  }
  return finding;
}

// A UV index that is extreme is too strong for whatever lives under it.
Found strong(const Build& build, const UvPlan& uv) {
  if (!too_strong(uv)) return {};
  const bool extreme = uv.basking >= constants::extreme_uv;
  Finding finding = missed(build, uv, extreme ? Weight::stop : Weight::caution, "uv-too-strong");
  finding.args.emplace_back("index", uv.basking);
  finding.args.emplace_back("most", uv.most);
  return {std::move(finding)};
}

// Of lamps without a table nothing is known: they may make it up.
Found weak(const Build& build, const UvPlan& uv) {
  const bool known = std::none_of(build.lamps.begin(), build.lamps.end(), [](const Lamp& lamp) {
    return is_uv(lamp) && lamp.uv_index.empty();
  });
  if (!too_weak(uv) || !known) return {};
  Finding finding = missed(build, uv, Weight::caution, "uv-too-weak");
  finding.args.emplace_back("index", uv.gradient.high);
  finding.args.emplace_back("least", uv.mean.low);
  return {std::move(finding)};
}

Found unshaded(const Build& build, const UvPlan& uv) {
  if (!no_shade(uv)) return {};
  Finding finding = missed(build, uv, Weight::caution, "uv-no-shade");
  finding.args.emplace_back("index", uv.gradient.low);
  finding.args.emplace_back("most", uv.mean.high);
  return {std::move(finding)};
}

Found meter(const Build& build, const UvPlan& uv) {
  if (uv.zone.high < 3) return {};
  const KeptAnimal& animal = build.kept[uv.animal];
  return {{Weight::note,
           "uv-meter-reading",
           animal.where,
           {{"animal", animal.facts.name}, {"zone", uv.zone.high}}}};
}

Found missing(const Build& build) {
  Found all;
  if (std::any_of(build.lamps.begin(), build.lamps.end(), is_uv)) return all;
  for (const KeptAnimal& animal : build.kept) {
    if (!has_uv_zone(animal.facts) || animal.facts.uv_zone->value.low < 2) continue;
    all.push_back({Weight::caution,
                   "uv-missing",
                   animal.where,
                   {{"animal", animal.facts.name},
                    {"zone", static_cast<int>(animal.facts.uv_zone->value.low)}}});
  }
  return all;
}

}  // namespace

Args no_mend(const std::string& why) {
  return {{"change", why}};
}

Found uv_findings(const Build& build, const Lighting& plan) {
  Found all = missing(build);
  for (const UvPlan& uv : plan.uv) {
    for (const auto rule : {strong, weak, unshaded, meter}) append(all, rule(build, uv));
  }
  return all;
}

}  // namespace loamsheet
