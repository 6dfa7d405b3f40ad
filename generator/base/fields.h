// fields: a value told field by field - name, unit, amount - to whoever writes it down. What a
// value holds is described once, by the fields() that stands with its type; JSON, CSV and the
// stable text are sinks that hear it.
#pragma once
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/arg.h"
#include "base/date.h"
#include "base/field_units.h"
#include "base/money.h"
#include "base/units.h"

namespace loamsheet {

// What a field is called: its name, and the unit that it is written in, if it has one.
struct FieldName {
  std::string_view name, unit{};
  std::string key() const;  // "volume_l"; of what stands in a list nothing
};

class FieldSink {
 public:
  virtual ~FieldSink();

  // Whether it wants what only a developer looks at.
  virtual bool inner() const { return false; }

  // The kinds of field. What stands in a list has no name.
  virtual void nothing(const FieldName&) = 0;
  virtual void yes_no(const FieldName&, bool) = 0;
  virtual void whole(const FieldName&, long) = 0;
  virtual void number(const FieldName&, double) = 0;
  virtual void money(const FieldName&, Money) = 0;
  virtual void text(const FieldName&, std::string_view) = 0;
  virtual void sentence(const FieldName&, const std::string& said, const Args&) = 0;
  virtual void open(const FieldName&) = 0;       // an object
  virtual void open_list(const FieldName&) = 0;  // of values or objects
  virtual void close() = 0;

  // A field of any of these types.
  void add(std::string_view name, bool v) { yes_no({name}, v); }
  void add(std::string_view name, int v) { whole({name}, v); }
  void add(std::string_view name, double v) { number({name}, v); }
  void add(std::string_view name, Money v) { money({name}, v); }
  void add(std::string_view name, const Ratio& v);
  void add(std::string_view name, Date v) { text({name}, iso(v)); }
  void add(std::string_view name, std::string_view v) { text({name}, v); }
  void add(std::string_view name, const char* v) { text({name}, v); }
  void add(std::string_view name, const std::vector<std::string>&);
  void add(std::string_view name, const std::vector<int>&);
  template <class T>
  void add(std::string_view name, const std::optional<T>& v) {
    v ? add(name, *v) : nothing({name});
  }

  // A text that may be empty, which says nothing.
  void add_known(std::string_view name, std::string_view);

  // An amount in a unit; a range whose ends are the same is one number.
  void add(std::string_view name, const UnitOf<void>&, double);
  template <class Tag>
  void add(std::string_view name, const UnitOf<Tag>& unit, Amount<Tag> v) {
    add(name, plain(unit), v.v);
  }
  template <class Tag, class T>
  void add(std::string_view name, const UnitOf<Tag>& unit, const Range<T>& v) {
    v.exact() ? add(name, unit, v.low) : ends(name, unit, v);
  }
  template <class Tag, class T>
  void add(std::string_view name, const UnitOf<Tag>& unit, const std::optional<T>& v) {
    v ? add(name, unit, *v) : nothing({name, unit.name});
  }

  // Several numbers in one field: both ends of a range, the sides of a piece, a place.
  void add_all(std::string_view name, const UnitOf<void>&, std::initializer_list<double>);
  template <class Tag>
  void add_all(std::string_view name, const UnitOf<Tag>& unit,
               std::initializer_list<Amount<Tag>> all) {
    open_list({name, unit.name});
    for (Amount<Tag> v : all) add("", unit, v);
    close();
  }
  template <class Tag, class T>
  void ends(std::string_view name, const UnitOf<Tag>& unit, const Range<T>& v) {
    add_all(name, unit, {v.low, v.high});
  }

  // A value with fields() of its own, and a list of such.
  template <class T>
  void object(std::string_view name, const T& v) {
    open({name}), fields(v, *this), close();
  }
  template <class T>
  void object(std::string_view name, const std::optional<T>& v) {
    v ? object(name, *v) : nothing({name});
  }
  template <class T>
  void list(std::string_view name, const std::vector<T>& all) {
    each(name, all, [this](const T& v) { fields(v, *this); });
  }

  // The same of a value whose fields need something else, too.
  template <class T, class Tell>
  void each(std::string_view name, const std::vector<T>& all, Tell tell) {
    open_list({name});
    for (const T& v : all) open({}), tell(v), close();
    close();
  }
};

}  // namespace loamsheet
