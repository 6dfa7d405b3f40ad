#include "plan/light/shaded.h"

namespace loamsheet {
namespace {

std::vector<Crown> others(const AmongCrowns& p) {
  std::vector<Crown> found;
  const Crown& own = *p.crowns[p.plant];
  for (size_t i = 0; i < p.crowns.size(); ++i) {
    if (i != p.plant && p.crowns[i] && may_shade(*p.crowns[i], own)) found.push_back(*p.crowns[i]);
  }
  return found;
}

double share_of(double part, double whole) {
  return whole > 0 ? part / whole : 1;
}

}  // namespace

LightAt shaded_light(const LightField& field, const AmongCrowns& p) {
  LightAt light = field.at(p.foot);
  const std::vector<Crown> shading = others(p);
  if (shading.empty()) return light;
  const Position& middle = p.crowns[p.plant]->middle;
  const LightAt open = field.at(middle), left = field.at(middle, shading);
  light.ppfd *= share_of(left.ppfd, open.ppfd);
  light.dli *= share_of(left.dli, open.dli);
  return light;
}

}  // namespace loamsheet
