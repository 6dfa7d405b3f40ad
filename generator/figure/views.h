// views: the figures, each to the largest preferred scale that fits the room. Nothing comes back
// when none does.
#pragma once
#include <optional>

#include "figure/tank.h"

namespace loamsheet {

std::optional<Figure> elevation(const FigureInput&);
std::optional<Figure> side_view(const FigureInput&);  // the section that an elevation goes without
std::optional<Figure> plan_view(const FigureInput&);
std::optional<Figure> light_map(const FigureInput&);  // of a build with a lamp that shines

// Lettering for the print that the build asks for.
Lettering lettering(const FigureInput&);

// Lines of text from a first base line downwards.
Marks text_block(const Typefaces&, const std::vector<Text>& lines, Point first);

// Whether a drawing of this extent fits the room that there is.
bool fits(const Box& drawn, const FigureInput&);

// A figure whose frame lies close about its marks. Title and description are left to the caller.
Figure framed(std::string id, Marks, int scale);

}  // namespace loamsheet
