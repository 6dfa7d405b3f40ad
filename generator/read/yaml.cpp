#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <sstream>

#include "read/raw.h"
#include "read/scalar_end.h"
#include "read/tree_builder.h"
#include "read/yaml_problem.h"

namespace loamsheet {
namespace {

class Listener : public YAML::EventHandler {
 public:
  Listener(TreeBuilder& builder, size_t size) : builder_(builder), size_(size) {}

  void OnDocumentStart(const YAML::Mark& mark) override { builder_.document(byte(mark)); }
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t) override { builder_.null(byte(mark)); }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override { builder_.alias(byte(mark)); }
  void OnScalar(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                const std::string& value) override {
    builder_.scalar(byte(mark), value);
  }
  void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                       YAML::EmitterStyle::value style) override {
    builder_.open(byte(mark), Raw::Form::list, style == YAML::EmitterStyle::Flow);
  }
  void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                  YAML::EmitterStyle::value style) override {
    builder_.open(byte(mark), Raw::Form::map, style == YAML::EmitterStyle::Flow);
  }
  void OnSequenceEnd() override { builder_.close(); }
  void OnMapEnd() override { builder_.close(); }

 private:
  size_t byte(const YAML::Mark& mark) const {
    return std::min(static_cast<size_t>(std::max(0, mark.pos)), size_);
  }

  TreeBuilder& builder_;
  size_t size_;
};

void parse_into(TreeBuilder& builder, const SourceText& source, const std::string& prepared) {
  try {
    std::istringstream in(prepared);
    YAML::Parser parser(in);
    Listener listener(builder, prepared.size());
    if (parser.HandleNextDocument(listener)) parser.HandleNextDocument(listener);
  } catch (Stop& stop) {
    builder.problems().add(std::move(stop.why));
  } catch (const YAML::Exception& e) {
    const auto at = static_cast<size_t>(std::max(0, e.mark.pos));
    builder.problems().add(syntax_problem(source, {e.msg, at, builder.open_brace()}));
  } catch (const std::exception& e) {
    builder.problems().add(syntax_problem(source, {e.what(), 0, builder.open_brace()}));
  }
}

}  // namespace

RawDocument parse_yaml(const SourceText& source) {
  RawDocument out;
  out.problems = check_bytes(source);
  if (!out.problems.empty()) return out;
  const std::string prepared = mark_unknowns(source.text());
  TreeBuilder builder(source, prepared);
  parse_into(builder, source, prepared);
  out.problems = builder.problems().take();
  out.root = builder.take_root();
  if (out.problems.empty() && out.root.form == Raw::Form::nothing) {
    out.problems.push_back(complaint({source.file(), 1, 1, 1}, "the file says nothing", "",
                                     "start from the example that 'loamsheet begin' prints"));
  }
  return out;
}

}  // namespace loamsheet
