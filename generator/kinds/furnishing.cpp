#include "kinds/furnishing.h"

namespace loamsheet {
namespace {

using Sign = FurnishingKind::Sign;
using Form = FurnishingKind::Form;
using Footprint = FurnishingKind::Footprint;
using Height = FurnishingKind::Height;
using Mouth = FurnishingKind::Mouth;

constexpr FurnishingKind rows[] = {
    {.id = "tube",
     .keys = "at|filled",
     .item = "tube",
     .label = "figure.kind-tube",
     .sign = Sign::tube,
     .footprint = Footprint::lying,
     .height = Height::diameter,
     .mouth = Mouth::ends,
     .stands = true,
     .shelters = true,
     .lain_on = true,
     .leads_out = true},
    {.id = "branch",
     .keys = "from|to",
     .item = "branch",
     .label = "figure.kind-branch",
     .sign = Sign::rod,
     .form = Form::rod,
     .offers_mounts = true,
     .lain_on = true,
     .climbed = true,
     .leads_out = true},
    {.id = "ledge",
     .keys = "at",
     .item = "ledge",
     .label = "figure.kind-ledge",
     .sign = Sign::board,
     .form = Form::board,
     .offers_pocket = true,
     .holds_terrace = true,
     .lain_on = true,
     .leads_out = true},
    {.id = "water-bowl",
     .keys = "at",
     .item = "water-bowl",
     .label = "figure.kind-water-bowl",
     .sign = Sign::bowl,
     .footprint = Footprint::disc,
     .height = Height::depth,
     .stands = true,
     .holds_water = true},
    {.id = "stone",
     .keys = "at",
     .item = "stone",
     .label = "figure.kind-stone",
     .sign = Sign::stone,
     .stands = true,
     .holds_terrace = true,
     .lain_on = true,
     .leads_out = true,
     .loose_weight = true},
    {.id = "hide",
     .keys = "at",
     .item = "hide",
     .label = "figure.kind-hide",
     .sign = Sign::roofed,
     .mouth = Mouth::front,
     .stands = true,
     .shelters = true,
     .lain_on = true},
    {.id = "laying-box",
     .keys = "at",
     .item = "laying-box",
     .label = "figure.kind-laying-box",
     .sign = Sign::rimmed,
     .mouth = Mouth::front,
     .stands = true,
     .laid_in = true},
    {.id = "feeding-ledge",
     .keys = "at",
     .item = "feeding-ledge",
     .label = "figure.kind-feeding-ledge",
     .sign = Sign::board,
     .form = Form::board},
    {.id = "basking-spot",
     .keys = "at",
     .label = "figure.kind-basking-spot",
     .sign = Sign::stone,
     .form = Form::place,
     .lain_on = true,
     .basked_on = true},
};

}  // namespace

std::span<const FurnishingKind> FurnishingKind::all() {
  return rows;
}

}  // namespace loamsheet
