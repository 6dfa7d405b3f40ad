// words: what the figure says of the enclosure, from templates/LANGUAGE/figure.yaml.
#pragma once
#include "figure/labels.h"

namespace loamsheet {

// Name and detail of what a label names, without a place.
Target drainage_label(const FigureInput&);
Target separator_label(const FigureInput&);
Target substrate_label(const FigureInput&);
Target litter_label(const FigureInput&);
Target standing_water_label(const FigureInput&);
Target highest_label(const FigureInput&);
Target background_label(const FigureInput&);
Target water_area_label(const FigureInput&);
Target opening_label(const FigureInput&, const Opening&);
Target standing_label(const FigureInput&, const Standing&);

// Scale and units, and the footprint's shape where the views show only its extent.
std::vector<std::string> notes(const FigureInput&, int scale);

// The whole figure in sentences with numbers, for who cannot see it.
std::string description(const FigureInput&);

}  // namespace loamsheet
