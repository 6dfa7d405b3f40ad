// What other programs make of a finished sheet.
#include <cstdio>

#include "sheet.h"

namespace loamsheet {
namespace {

// What a command says, its complaints too, and whether it was content.
struct Heard {
  std::string said;
  bool content;
};

Heard heard(const std::string& command) {
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  REQUIRE(pipe);
  std::string said;
  for (int c = std::fgetc(pipe); c != EOF; c = std::fgetc(pipe)) said += static_cast<char>(c);
  return {said, pclose(pipe) == 0};
}

// A finished sheet as a file that programs can read.
class SheetFile {
 public:
  explicit SheetFile(Archive archive)
      : path_(LOAMSHEET_BUILD "/tests/finished-" + std::to_string(static_cast<int>(archive)) +
              ".pdf") {
    REQUIRE(real_world()->write(path_, finished(archive)));
  }
  ~SheetFile() { std::remove(path_.c_str()); }
  SheetFile(const SheetFile&) = delete;
  SheetFile& operator=(const SheetFile&) = delete;

  const std::string& path() const { return path_; }

  // What a command that must be content says about the file.
  std::string seen_by(const std::string& command, const std::string& options = "") const {
    const Heard answer = heard(command + " '" + path_ + "' " + options);
    INFO(command << " says: " << answer.said);
    CHECK(answer.content);
    return answer.said;
  }

 private:
  std::string path_;
};

}  // namespace

TEST_CASE("the plain archive is valid PDF/A-1b") {
  const SheetFile sheet(Archive::plain);
  CHECK(sheet.seen_by("sh tests/rules/preflight.sh").find("is a valid PDF/A-1b file") !=
        std::string::npos);
}

TEST_CASE("the validator refuses what is not PDF/A-1b: embedded files") {
  const SheetFile sheet(Archive::full);
  const Heard answer = heard("sh tests/rules/preflight.sh '" + sheet.path() + "'");
  CHECK(!answer.content);
  CHECK(answer.said.find("EmbeddedFile entry is present") != std::string::npos);
}

TEST_CASE("qpdf finds no fault in either archive") {
  SheetFile(Archive::plain).seen_by("qpdf --check");
  SheetFile(Archive::full).seen_by("qpdf --check");
}

TEST_CASE("every font is embedded, cut and says its text") {
  const std::string fonts = SheetFile(Archive::full).seen_by("pdffonts");
  int yes = 0;
  for (size_t at = 0; (at = fonts.find("yes yes yes", at)) != std::string::npos; ++at) ++yes;
  CHECK(yes == 4);  // two of libharu, two of Cairo
  CHECK(fonts.find(" no ") == std::string::npos);
}

TEST_CASE("the structure reads in order, with blanks between lines but not within words") {
  const std::string text = SheetFile(Archive::full).seen_by("pdfinfo -struct-text");
  CHECK(text ==
        "Document\n"
        "  H1 (block)\n"
        "    \"Build sheet\"\n"
        "  P (block)\n"
        "    \"Spread 13.5 L of clay – 5 cm deep; lay the self-draining mesh \"\n"
        "    \"on ½ × Ω.\"\n"
        "  Figure:\n"
        "     /BBox [50 500 333.46 641.73]\n"
        "     /Placement /Block\n"
        "    \"clay 5 cmΩ ≥ 2\"\n"
        "  Table (block)\n"
        "    TR\n"
        "      TH:\n"
        "         /Scope /Column\n"
        "        \"Item\"\n"
        "      TD\n"
        "        \"clay\"\n");
}

TEST_CASE("figures stay searchable text, and page furniture is there too") {
  const std::string text = SheetFile(Archive::full).seen_by("pdftotext -layout", "-");
  for (const std::string part : {"clay 5 cm", "Ω", "page 1", "page 2", "draining mesh"}) {
    INFO(text);
    CHECK(text.find(part) != std::string::npos);
  }
}

}  // namespace loamsheet
