#include "base/diagnostic.h"

#include <catch2/catch.hpp>

using namespace loamsheet;

namespace {

Diagnostic problem(Span where, const std::string& message) {
  Diagnostic d;
  d.where = std::move(where);
  d.message = message;
  return d;
}

LineLookup always(const std::string& line) {
  return [line](const std::string&, int) { return line; };
}

}  // namespace

TEST_CASE("a diagnostic shows place, line, caret, what was expected and a hint") {
  Diagnostic d = problem({"spec.yaml", 3, 5, 9}, "unknown plant 'peperomea'");
  d.expected = "the id of a plant, for example 'ficus-pumila'";
  d.hint = "did you mean 'peperomia'?";
  CHECK(render(d, always("    peperomea: 2")) ==
        "spec.yaml:3:5: error: unknown plant 'peperomea'\n"
        "      peperomea: 2\n"
        "      ^~~~~~~~~\n"
        "expected: the id of a plant, for example 'ficus-pumila'\n"
        "hint: did you mean 'peperomia'?\n");
}

TEST_CASE("the caret counts code points and never runs past the line") {
  const Diagnostic d = problem({"s", 1, 7, 99}, "m");
  CHECK(render(d, always("17–26 °C")) == "s:1:7: error: m\n  17–26 °C\n        ^~\n");
}

TEST_CASE("a place outside its line still gives a caret") {
  CHECK(render(problem({"s", 1, 40, 3}, "m"), always("ab")) == "s:1:40: error: m\n  ab\n    ^\n");
  CHECK(render(problem({"s", 1, 0, 0}, "m"), always("ab")) == "s:1:0: error: m\n  ab\n  ^\n");
}

TEST_CASE("a long line is cut around the place") {
  const std::string text = render(problem({"s", 1, 501, 4}, "m"),
                                  always(std::string(500, '-') + "here" + std::string(500, '-')));
  CHECK(text == "s:1:501: error: m\n  " + std::string(48, '-') + "here" + std::string(44, '-') +
                    "\n  " + std::string(48, ' ') + "^~~~\n");
}

TEST_CASE("without a place only the sentence is shown") {
  CHECK(render(problem({}, "no spec was named"), {}) == "error: no spec was named\n");
  CHECK(render(problem({"a.yaml", 0, 0, 0}, "cannot be read"), {}) ==
        "a.yaml: error: cannot be read\n");
}

TEST_CASE("all are shown in the order of file and place") {
  const std::vector<Diagnostic> all = {problem({"b", 1, 1, 1}, "third"),
                                       problem({"a", 2, 9, 1}, "second"),
                                       problem({"a", 2, 1, 1}, "first")};
  CHECK(render(all, {}) == "a:2:1: error: first\na:2:9: error: second\nb:1:1: error: third\n");
}

TEST_CASE("a sink has failed only when it holds an error") {
  Sink sink;
  Diagnostic warning = problem({}, "w");
  warning.severity = Severity::warning;
  sink.add(warning);
  CHECK_FALSE(sink.failed());
  sink.add(std::vector{problem({}, "e")});
  CHECK(sink.failed());
  CHECK(sink.take().size() == 2);
}
