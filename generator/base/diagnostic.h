// diagnostic: errors as values - where, what, what was expected, what next - and Outcome, the
// result of every stage. Everything is collected; nothing is thrown to the user.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/span.h"

namespace loamsheet {

enum class Severity { error, warning };

// A change of the file that mends the problem: put `text` where `where` is.
struct Edit {
  Span where;
  std::string text;
};

// What kind of failure it is decides the exit code of the command line.
enum class Fault { input, file, internal };

struct Diagnostic {
  Severity severity = Severity::error;
  Span where{};
  std::string message{};       // one plain sentence, no full stop
  std::string expected{};      // may be empty: what would have been right, with an example
  std::string hint{};          // may be empty: what to do next
  std::optional<Edit> edit{};  // set when the hint is a change of the file
  Fault fault = Fault::input;
};

// Collects the problems of one stage.
class Sink {
 public:
  void add(Diagnostic d) { messages_.push_back(std::move(d)); }
  void add(std::vector<Diagnostic> more);
  bool failed() const;  // an error (not only warnings) was added
  const std::vector<Diagnostic>& messages() const { return messages_; }
  std::vector<Diagnostic> take() { return std::move(messages_); }

 private:
  std::vector<Diagnostic> messages_;
};

// What a stage returns. `value` is empty exactly when an error was reported.
template <class T>
struct Outcome {
  std::optional<T> value;
  std::vector<Diagnostic> messages;
  explicit operator bool() const { return value.has_value(); }
};

template <class T>
Outcome<T> failure(Diagnostic d) {
  return {std::nullopt, {std::move(d)}};
}

// The value of an outcome; its messages go to the sink.
template <class T>
std::optional<T> taken(Outcome<T>&& outcome, Sink& sink) {
  sink.add(std::move(outcome.messages));
  return std::move(outcome.value);
}

// Gives the text of a line (from 1) of a file, without its line end; empty when there is none.
using LineLookup = std::function<std::string(const std::string& file, int line)>;

// A diagnostic as the terminal shows it: place and message, the line, a caret, expected, hint.
std::string render(const Diagnostic&, const LineLookup&);

// All of them, in order of file and place, each ending with a newline.
std::string render(std::vector<Diagnostic>, const LineLookup&);

}  // namespace loamsheet
