// plants: where the placed plants lie in a view, at planting size and grown up.
#pragma once
#include <functional>

#include "figure/numbers.h"
#include "figure/tank.h"

namespace loamsheet {

// Planting size: about a third of the mature size, at least 4 cm, never more than mature. Common
// practice of nurseries that sell in 6 to 9 cm pots.
Millimetres planting_size(Millimetres mature);

// The plants that have a place; nothing without a planting plan.
std::vector<const PlacedPlant*> placed_plants(const FigureInput&);

// The habit of a plant by its number, as the catalogue has it.
std::string habit_of(const FigureInput&, int number);

// The runs of a line that lie inside.
std::vector<std::vector<Point>> inside_runs(const std::vector<Point>&,
                                            const std::function<bool(Point)>& inside);

// The plants of the front view with their mature outlines, and what gets a number.
struct DrawnPlants {
  Marks marks;
  std::vector<Numbered> numbered;
};
DrawnPlants plants_front(const Tank&);

// The same from above: circles.
DrawnPlants plants_above(const Tank&);

}  // namespace loamsheet
