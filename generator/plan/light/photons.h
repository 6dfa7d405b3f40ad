// light: the illuminance that one lamp shape gives on a level surface below it. Lengths in metres;
// the lamp shines downwards only.
#pragma once

namespace loamsheet {

// The integral along a Lambertian line source of dz^2 / r^4, from its foot to `along`; times the
// intensity of a metre of it, this is the illuminance. `across` and `down` are the surface's
// distances from the line. IES aspect-factor method.
double line_factor(double along, double across, double down);

// Configuration factor from a level element to a Lambertian rectangle above it whose one corner is
// right over the element: a and b its sides (signed), c its height. Siegel and Howell.
double corner_factor(double a, double b, double c);

// The exponent m of a beam that falls off as cos^m to half at half its full angle, in degrees.
double beam_exponent(double full_angle);

}  // namespace loamsheet
