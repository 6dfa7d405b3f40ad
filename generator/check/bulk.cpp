#include "check/bulk.h"

namespace loamsheet {
namespace {

// Asks a material for its constants and reports those that it lacks.
class Constants {
 public:
  Constants(Checking& c, const Material& m, const Span& where) : c_(c), m_(m), where_(where) {}

  // The middle of what the catalogue states: the nominal density that masses are worked with.
  Range<KilogramsPerCubicMetre> density() const {
    const auto stated = value(m_.dry_density, "dry_density");
    const auto nominal = (stated.low + stated.high) / 2;
    return {nominal, nominal};
  }
  Fraction voids() const { return value(m_.voids, "voids"); }

  // Stated, or what the pores hold beside the voids.
  Fraction field_capacity() const {
    const bool follows = !m_.field_capacity && m_.porosity && m_.voids;
    if (follows) return m_.porosity->value - m_.voids->value;
    return value(m_.field_capacity, "field_capacity");
  }
  Range<Fraction> dry() const { return value(m_.moisture_dry, "moisture_dry"); }
  Range<Fraction> damp() const { return value(m_.moisture_damp, "moisture_damp"); }

 private:
  template <class T>
  T value(const std::optional<Fact<T>>& fact, const std::string& name) const {
    if (fact) return fact->value;
    c_.error(where_, "'" + m_.id + "' has no " + name + ", which the plan needs here", "",
             "add " + name + " to materials." + m_.id);
    return {};
  }

  Checking& c_;
  const Material& m_;
  const Span& where_;
};

Fraction middle(const Range<Fraction>& r) {
  return (r.low + r.high) / 2;
}

Uncertain<Fraction> moisture(const Constants& of, const Placed& placed) {
  using enum Placed::How;
  const Fraction low = placed.how == damp ? Fraction{} : middle(of.dry());
  const Fraction high = placed.how == dry ? low : middle(of.damp());
  return {{placed.how == damp ? high : low, high}, placed.unknown};
}

}  // namespace

Bulk drainage_bulk(Checking& c, const Material& m, const Span& where) {
  const Constants of(c, m, where);
  return {m.id, of.density(), of.voids(), of.field_capacity(), {}};
}

Bulk substrate_bulk(Checking& c, const Material& m, const Placed& placed, const Span& where) {
  const Constants of(c, m, where);
  return {m.id, of.density(), of.voids(), of.field_capacity(), moisture(of, placed)};
}

Bulk litter_bulk(Checking& c, const Material& m, const Span& where) {
  const Constants of(c, m, where);
  return {m.id, of.density(), {}, of.field_capacity(), {}};
}

}  // namespace loamsheet
