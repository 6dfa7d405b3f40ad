#include "catalogue/rules.h"

#include <algorithm>
#include <map>

#include "base/text.h"
#include "catalogue/rule_keys.h"

namespace loamsheet {
namespace {

std::vector<std::string> texts(const Node& node, std::string_view path) {
  std::vector<std::string> all;
  const Node* list = node.find(path);
  if (!list) return all;
  for (const Node& item : list->items) all.push_back(std::get<std::string>(item.leaf));
  return all;
}

Conditions conditions(const Node& node) {
  return {texts(node, "if"), texts(node, "unless")};
}

int whole(const Node& node, std::string_view path) {
  return static_cast<int>(node.number(path).value_or(0));
}

WorkRule work_rule(const std::string& id, const Node& n) {
  return {.id = id,
          .group = n.text("group").value_or(""),
          .each = n.text("for").value_or(""),
          .after = texts(n, "after"),
          .slots = texts(n, "slots"),
          .needs = texts(n, "needs"),
          .when = conditions(n),
          .minutes = whole(n, "minutes"),
          .pause = n.yes("pause").value_or(false),
          .where = n.name};
}

CareRule::From from_named(const std::string& name) {
  if (name == "move") return CareRule::From::move;
  if (name == "replacement") return CareRule::From::replacement;
  return name == "ready" ? CareRule::From::ready : CareRule::From::planting;
}

CareRule care_rule(const std::string& id, const Node& n) {
  CareRule rule;
  rule.id = id;
  rule.from = from_named(n.text("from").value_or("planting"));
  rule.on = whole(n, "on");
  if (n.has("to")) rule.to = whole(n, "to");
  rule.every = whole(n, "every");
  rule.moves = n.yes("moves").value_or(true);
  rule.milestone = n.yes("milestone").value_or(false);
  rule.while_empty = n.yes("while_empty").value_or(false);
  rule.amount = n.text("amount").value_or("");
  rule.after = texts(n, "after");
  rule.gap = whole(n, "gap");
  rule.needs = texts(n, "needs");
  rule.when = conditions(n);
  rule.where = n.name;
  return rule;
}

ReadinessRule readiness_rule(const std::string& id, const Node& n) {
  return {.id = id,
          .days = whole(n, "days"),
          .more = whole(n, "more"),
          .after_acquired = whole(n, "after_acquired"),
          .when = conditions(n),
          .where = n.name};
}

Supply supply(const std::string& id, const Node& n) {
  return {.id = id,
          .per = n.text("per").value_or(""),
          .unit = n.text("unit").value_or("piece"),
          .amount = n.number("amount").value_or(0),
          .where = n.name};
}

CarePoint care_point(const std::string& id, const Node& n) {
  return {.id = id, .under = n.text("under").value_or(""), .when = conditions(n), .where = n.name};
}

template <class Rule>
std::vector<Rule> section(const Node& root, std::string_view name,
                          Rule (*read)(const std::string&, const Node&)) {
  std::vector<Rule> rules;
  const Node* found = root.find(name);
  if (!found) return rules;
  for (const auto& [id, node] : found->entries) rules.push_back(read(id, node));
  return rules;
}

// A name in a list of a rule, and what it has to be one of.
struct Named {
  const char* what;
  const char* list;
  const char* expected;
};

void check_name(const std::string& typed, const Span& where, const std::vector<std::string>& known,
                const Named& as, Sink& sink) {
  if (std::find(known.begin(), known.end(), typed) != known.end()) return;
  const auto near = closest(typed, known);
  sink.add({.where = where,
            .message = std::string("unknown ") + as.what + " '" + typed + "' in '" + as.list + "'",
            .expected = as.expected,
            .hint = near ? "did you mean '" + *near + "'?" : ""});
}

template <class Rule>
std::vector<std::string> ids(const std::vector<Rule>& rules) {
  std::vector<std::string> all;
  for (const Rule& rule : rules) all.push_back(rule.id);
  return all;
}

// What a task may need.
std::vector<std::string> needable(const TaskRules& rules) {
  std::vector<std::string> all = pull_uses();
  all.insert(all.end(), rules.tools.begin(), rules.tools.end());
  for (const Supply& supply : rules.supplies) all.push_back(supply.id);
  return all;
}

template <class Rule>
void check_names(const std::vector<Rule>& rules, const std::vector<std::string>& needable,
                 Sink& sink) {
  constexpr Named task{"task", "after", "a task of the same section"};
  constexpr Named need{"need", "needs", "a tool, a supply or a use of the pull list"};
  const auto tasks = ids(rules);
  for (const Rule& rule : rules) {
    for (const std::string& name : rule.after) check_name(name, rule.where, tasks, task, sink);
    for (const std::string& name : rule.needs) check_name(name, rule.where, needable, need, sink);
  }
}

// Walks from step to step along "after" and reports the first ring it meets.
class RingSearch {
 public:
  RingSearch(const std::vector<WorkRule>& rules, Sink& sink) : sink_(sink) {
    for (const WorkRule& rule : rules) rules_[rule.id] = &rule;
  }

  void from(const WorkRule& rule) {
    if (found_ || done_[rule.id]) return;
    const auto again = std::find(path_.begin(), path_.end(), rule.id);
    if (again != path_.end()) return report(rule, {again, path_.end()});
    path_.push_back(rule.id);
    for (const std::string& name : rule.after) {
      if (const auto next = rules_.find(name); next != rules_.end()) from(*next->second);
    }
    path_.pop_back();
    done_[rule.id] = true;
  }

 private:
  void report(const WorkRule& rule, std::vector<std::string> ring) {
    found_ = true;
    ring.push_back(rule.id);
    sink_.add({.where = rule.where,
               .message = "tasks wait for one another: " + join(ring, " after "),
               .expected = "an order in which every task comes after those it names"});
  }

  std::map<std::string, const WorkRule*> rules_;
  std::map<std::string, bool> done_;
  std::vector<std::string> path_;
  bool found_ = false;
  Sink& sink_;
};

void check_windows(const std::vector<CareRule>& rules, Sink& sink) {
  for (const CareRule& rule : rules) {
    if (!rule.to || (rule.every > 0 && *rule.to >= rule.on)) continue;
    sink.add({.where = rule.where,
              .message = "'" + rule.id + "' ends before it comes again",
              .expected = "'to' no earlier than 'on', together with 'every'"});
  }
}

}  // namespace

YamlFilePtr rules_file(World& world, Sink& sink) {
  return data_file(world, "templates/tasks.yaml", sink);
}

Outcome<TaskRules> read_rules(World& world) {
  Sink sink;
  const auto file = rules_file(world, sink);
  if (!file) return {std::nullopt, sink.take()};
  return rules_in(*file);
}

Outcome<TaskRules> rules_in(const YamlFile& file) {
  Sink sink;
  const auto root = taken(read_document(file, rule_keys()), sink);
  if (!root) return {std::nullopt, sink.take()};
  TaskRules rules{
      section(*root, "work", work_rule),           section(*root, "care", care_rule),
      section(*root, "readiness", readiness_rule), texts(*root, "tools"),
      section(*root, "supplies", supply),          section(*root, "points", care_point)};
  const auto known = needable(rules);
  check_names(rules.work, known, sink);
  check_names(rules.care, known, sink);
  check_windows(rules.care, sink);
  RingSearch search(rules.work, sink);
  for (const WorkRule& rule : rules.work) search.from(rule);
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(rules), sink.take()};
}

}  // namespace loamsheet
