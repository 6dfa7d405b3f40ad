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
Target furnishing_label(const FigureInput&, const Furnishing&);
Target lamp_label(const FigureInput&, const Lamp&);

// A furnishing or "background", by the id that plants are put on.
std::string thing_name(const FigureInput&, const std::string& id);

// Scale and units, and the footprint's shape where the views show only its extent.
std::vector<std::string> notes(const FigureInput&, int scale);

// How plants are drawn, and the numbers that found no place.
std::vector<std::string> plant_notes(const FigureInput&, const std::vector<int>& left_out,
                                     bool in_one_line);
std::vector<std::string> unnumbered_notes(const FigureInput&, const std::vector<int>& left_out);

// The plan view's notes; `unnamed` when its names are left away.
std::vector<std::string> plan_notes(const FigureInput&, int scale, bool unnamed);

// The plan view in sentences: what stands where.
std::string plan_description(const FigureInput&);

// The enclosure in sentences with numbers, for who cannot see it; `views` is the name of the words
// that say what is shown.
std::string description(const FigureInput&, const char* views);

}  // namespace loamsheet
