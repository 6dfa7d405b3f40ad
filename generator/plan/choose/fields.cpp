#include "base/fields.h"
#include "plan/choose/choose.h"

namespace loamsheet {

void fields(const PickedPlant& plant, FieldSink& to) {
  to.add("number", plant.number);
  to.add("species", plant.species);
  to.add("role", plant.role);
  to.add("price", plant.price);
  to.open_list({"why"});
  for (const Reason& why : plant.why) to.sentence({}, "planting.picked." + why.name, why.args);
  to.close();
}

void fields(const PassedOver& plant, FieldSink& to) {
  to.add("species", plant.species);
  to.add("role", plant.role);
  to.add("because", plant.because.name);
  to.sentence({"words"}, "planting.passed." + plant.because.name, plant.because.args);
}

void fields(const Selection& selection, FieldSink& to) {
  to.add("wanted", selection.wanted);
  to.add("budget", selection.budget);
  to.add("cost", selection.cost);
  to.list("picked", selection.picked);
  to.list("passed_over", selection.passed_over);
  to.add("empty_roles", selection.empty_roles);
}

}  // namespace loamsheet
