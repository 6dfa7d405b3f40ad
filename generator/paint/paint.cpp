// The n-th text object (BT .. ET) of a page is the n-th TextMark of that page: finish relies on it
// to mark the content. Streams are left uncompressed; finish reads and packs them.
#include "paint/paint.h"

#include <hpdf.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "base/code_points.h"
#include "base/text.h"
#include "paint/memory_file.h"

namespace loamsheet {
namespace {

Diagnostic internal(std::string message) {
  Diagnostic d;
  d.message = std::move(message);
  d.fault = Fault::internal;
  return d;
}

// libharu's document with the first error it met; later ones only follow from it.
class HaruDocument {
 public:
  HaruDocument() : doc_(HPDF_New(&remember_first, &first_)) {}
  ~HaruDocument() {
    if (doc_) HPDF_Free(doc_);
  }
  HaruDocument(const HaruDocument&) = delete;
  HaruDocument& operator=(const HaruDocument&) = delete;

  HPDF_Doc get() const { return doc_; }
  bool failed() const { return !doc_ || first_.code != 0; }
  Diagnostic error() const {
    return internal("the PDF library failed with code " + std::to_string(first_.code) +
                    ", detail " + std::to_string(first_.detail));
  }

 private:
  struct First {
    HPDF_STATUS code = 0, detail = 0;
  } first_;
  static void remember_first(HPDF_STATUS code, HPDF_STATUS detail, void* user) {
    if (auto& first = *static_cast<First*>(user); first.code == 0) first = {code, detail};
  }
  HPDF_Doc doc_;
};

using UsedLetters = std::array<CodePoints, face_count>;
using Fonts = std::array<HPDF_Font, face_count>;

UsedLetters letters_in_use(const Pages& pages) {
  UsedLetters used;
  for (const Page& page : pages.pages) {
    for (const PageMark& mark : page.marks) {
      const auto* text = std::get_if<TextMark>(&mark);
      if (!text) continue;
      for (char32_t c : decoded(text->text)) used[static_cast<size_t>(text->face)].add(c);
    }
  }
  return used;
}

// Loads the faces in use, each cut to its letters. libharu keeps its own handle on the file.
std::optional<Diagnostic> load_fonts(const UsedLetters& used, const Typefaces& type,
                                     HaruDocument& document, Fonts& fonts) {
  for (size_t i = 0; i < used.size(); ++i) {
    const auto& letters = used[i].all();
    if (letters.empty()) continue;
    const auto cut = type.cut(static_cast<Face>(i), letters);
    if (!cut) return cut.messages.front();
    const MemoryFile file(*cut.value);
    if (!file.good()) return internal("there is no memory for a font file");
    const char* name = HPDF_LoadTTFontFromFile(document.get(), file.path().c_str(), HPDF_TRUE);
    if (!name) return document.error();
    fonts[i] = HPDF_GetFont(document.get(), name, "UTF-8");
    if (!fonts[i]) return document.error();
  }
  return std::nullopt;
}

HPDF_REAL real(double v) {
  return static_cast<HPDF_REAL>(v);
}

// Paints the marks of one page in their order; states are set only when they change.
class PagePainter {
 public:
  PagePainter(HPDF_Page page, const Fonts& fonts) : page_(page), fonts_(fonts) {}

  void operator()(const TextMark& m) {
    fill(m.grey);
    HPDF_Page_BeginText(page_);
    font(m.face, m.size);
    HPDF_Page_TextOut(page_, real(m.at.x), real(m.at.y), m.text.c_str());
    HPDF_Page_EndText(page_);
  }

  void operator()(const RuleMark& m) {
    stroke(m.grey, m.width);
    dash(m.dashes);
    HPDF_Page_MoveTo(page_, real(m.from.x), real(m.from.y));
    HPDF_Page_LineTo(page_, real(m.to.x), real(m.to.y));
    HPDF_Page_Stroke(page_);
  }

  void operator()(const BoxMark& m) {
    if (m.fill < 0 && m.stroke < 0) return;
    if (m.fill >= 0) fill(m.fill);
    if (m.stroke >= 0) {
      stroke(m.stroke, m.stroke_width);
      dash({});
    }
    HPDF_Page_Rectangle(page_, real(m.box.left), real(m.box.bottom), real(m.box.width()),
                        real(m.box.height()));
    if (m.fill < 0) {
      HPDF_Page_Stroke(page_);
    } else if (m.stroke < 0) {
      HPDF_Page_Fill(page_);
    } else {
      HPDF_Page_FillStroke(page_);
    }
  }

  void operator()(const FigureMark&) {}  // finish puts figures in

 private:
  void fill(double grey) {
    if (std::exchange(fill_, grey) != grey) HPDF_Page_SetGrayFill(page_, real(grey));
  }

  void stroke(double grey, double width) {
    if (std::exchange(stroke_, grey) != grey) HPDF_Page_SetGrayStroke(page_, real(grey));
    if (std::exchange(width_, width) != width) HPDF_Page_SetLineWidth(page_, real(width));
  }

  // libharu takes dashes in whole points only.
  void dash(const std::vector<double>& dashes) {
    if (dashes == dashes_) return;
    dashes_ = dashes;
    std::vector<HPDF_UINT16> whole;
    for (double d : dashes) {
      whole.push_back(static_cast<HPDF_UINT16>(std::max(1L, std::lround(d))));
    }
    HPDF_Page_SetDash(page_, whole.data(), static_cast<HPDF_UINT>(whole.size()), 0);
  }

  void font(Face face, double size) {
    if (face == face_ && size == size_) return;
    face_ = face;
    size_ = size;
    HPDF_Page_SetFontAndSize(page_, fonts_[static_cast<size_t>(face)], real(size));
  }

  HPDF_Page page_;
  const Fonts& fonts_;
  double fill_ = 0, stroke_ = 0, width_ = 1;  // as a page starts
  std::vector<double> dashes_;
  Face face_ = Face::regular;
  double size_ = 0;
};

void paint_page(const Page& page, const Fonts& fonts, HaruDocument& document) {
  const HPDF_Page paper = HPDF_AddPage(document.get());
  if (!paper) return;
  HPDF_Page_SetWidth(paper, real(page.width));
  HPDF_Page_SetHeight(paper, real(page.height));
  PagePainter painter(paper, fonts);
  for (const PageMark& mark : page.marks) {
    if (document.failed()) return;
    std::visit(painter, mark);
  }
}

Outcome<std::string> saved(HaruDocument& document) {
  if (!document.failed()) HPDF_SaveToStream(document.get());
  if (document.failed()) return failure<std::string>(document.error());
  HPDF_UINT32 size = HPDF_GetStreamSize(document.get());
  std::string bytes(size, '\0');
  HPDF_ReadFromStream(document.get(), reinterpret_cast<HPDF_BYTE*>(bytes.data()), &size);
  if (document.failed() || size != bytes.size()) return failure<std::string>(document.error());
  return {std::move(bytes), {}};
}

}  // namespace

Outcome<std::string> paint(const Pages& pages, const Typefaces& type) {
  HaruDocument document;
  if (!document.get()) return failure<std::string>(internal("there is no memory for a document"));
  HPDF_UseUTFEncodings(document.get());
  HPDF_SetCompressionMode(document.get(), HPDF_COMP_NONE);
  Fonts fonts{};
  if (auto error = load_fonts(letters_in_use(pages), type, document, fonts)) {
    return failure<std::string>(std::move(*error));
  }
  for (const Page& page : pages.pages) paint_page(page, fonts, document);
  return saved(document);
}

}  // namespace loamsheet
