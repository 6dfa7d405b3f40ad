// bare_writer: the yardstick that `tests/bench/run` holds loamsheet against. Writes what a sheet
// weighs (8 pages, 3,856 words, 4 tables of 25 rows, a 35-cell calendar, a figure of 150 primitives
// and 40 labels) with libharu, Cairo and libqpdf used plainly: the whole font, no tuning, nothing
// worked out, no tags, no metadata.
#include <cairo-ft.h>
#include <cairo-pdf.h>
#include <hpdf.h>

#include <cstdio>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>
#include <string>
#include <vector>

namespace {

constexpr const char* font_file = LOAMSHEET_BUILD "/fonts/OpenSans-Regular.ttf";
constexpr double paper_width = 595.28, paper_height = 841.89, margin = 45;
constexpr int words_on_a_page = 482;

// Made-up words in a fixed order, with the letters, figures and signs that a sheet has.
class Words {
 public:
  std::string next() {
    ++taken_;
    if (taken_ % 9 == 0) return std::to_string(random(400)) + pick({"%", "°", "½", "²", "×", "µ"});
    std::string word = syllable();
    for (unsigned more = random(3); more > 0; --more) word += syllable();
    if (taken_ % 7 == 0) word[0] = static_cast<char>(word[0] - 'a' + 'A');
    if (taken_ % 13 == 0) word += pick({".", ",", ":", ";", "!", "?", ")", "–", "é", "’"});
    return word;
  }
  int taken() const { return taken_; }

 private:
  unsigned state_ = 7;
  int taken_ = 0;

  unsigned random(unsigned below) {
    state_ = state_ * 1103515245u + 12345u;
    return (state_ >> 16) % below;
  }
  std::string pick(const std::vector<std::string>& from) {
    return from[random(static_cast<unsigned>(from.size()))];
  }
  std::string syllable() {
    return pick({"b",  "c", "d", "f", "g", "h", "j", "k", "l", "m",  "n",  "p",
                 "qu", "r", "s", "t", "v", "w", "x", "y", "z", "ch", "st", "tr"}) +
           pick({"a", "e", "i", "o", "u", "ea", "ou", "er", "in"});
  }
};

// The pages, by libharu.
class Writer {
 public:
  Writer() : document_(HPDF_New(nullptr, nullptr)) {
    HPDF_UseUTFEncodings(document_);
    HPDF_SetCompressionMode(document_, HPDF_COMP_ALL);
    font_ =
        HPDF_GetFont(document_, HPDF_LoadTTFontFromFile(document_, font_file, HPDF_TRUE), "UTF-8");
  }
  ~Writer() { HPDF_Free(document_); }
  Writer(const Writer&) = delete;
  Writer& operator=(const Writer&) = delete;

  void begin_page() {
    page_ = HPDF_AddPage(document_);
    HPDF_Page_SetWidth(page_, paper_width);
    HPDF_Page_SetHeight(page_, paper_height);
    words_at_start_ = words_.taken();
    y_ = paper_height - 60;
    text(16, margin, words_.next() + " " + words_.next());
    y_ -= 24;
  }

  void table(int rows, int columns) {
    const double width = (paper_width - 2 * margin) / columns;
    for (int row = 0; row < rows; ++row) {
      for (int column = 0; column < columns; ++column) {
        text(9, margin + column * width + 2, words_.next());
      }
      line(margin, y_ - 3, paper_width - margin, y_ - 3);
      y_ -= 13;
    }
  }

  void calendar() {
    const double width = (paper_width - 2 * margin) / 7, height = 50;
    for (int cell = 0; cell < 35; ++cell) {
      HPDF_Page_Rectangle(page_, margin + cell % 7 * width, y_ - height, width, height);
      HPDF_Page_Stroke(page_);
      const double top = y_;
      y_ -= 12;
      text(11, margin + cell % 7 * width + 3, std::to_string(cell + 1));
      y_ -= 14;
      text(9, margin + cell % 7 * width + 3, words_.next() + " " + words_.next());
      y_ = cell % 7 == 6 ? top - height : top;
    }
    y_ -= 20;
  }

  void leave_room(double height) { y_ -= height; }

  // Paragraphs, broken where a line is full, until the page has its words.
  void fill() {
    std::string full;
    while (words_.taken() - words_at_start_ < words_on_a_page) {
      const std::string word = words_.next();
      if (width(full + " " + word) > paper_width - 2 * margin) put_line(full);
      full += full.empty() ? word : " " + word;
    }
    put_line(full);
  }

  std::string bytes() {
    HPDF_SaveToStream(document_);
    std::string out(HPDF_GetStreamSize(document_), '\0');
    HPDF_UINT32 size = static_cast<HPDF_UINT32>(out.size());
    HPDF_ReadFromStream(document_, reinterpret_cast<HPDF_BYTE*>(out.data()), &size);
    return out;
  }

 private:
  HPDF_Doc document_;
  HPDF_Font font_ = nullptr;
  HPDF_Page page_ = nullptr;
  Words words_;
  int words_at_start_ = 0;
  double y_ = 0;

  double width(const std::string& words) {
    HPDF_Page_SetFontAndSize(page_, font_, 9);
    return HPDF_Page_TextWidth(page_, words.c_str());
  }

  void put_line(std::string& words) {
    text(9, margin, words);
    words.clear();
    y_ -= 12;
  }

  void text(double size, double x, const std::string& words) {
    HPDF_Page_BeginText(page_);
    HPDF_Page_SetFontAndSize(page_, font_, static_cast<float>(size));
    HPDF_Page_TextOut(page_, static_cast<float>(x), static_cast<float>(y_), words.c_str());
    HPDF_Page_EndText(page_);
  }

  void line(double x1, double y1, double x2, double y2) {
    HPDF_Page_MoveTo(page_, static_cast<float>(x1), static_cast<float>(y1));
    HPDF_Page_LineTo(page_, static_cast<float>(x2), static_cast<float>(y2));
    HPDF_Page_Stroke(page_);
  }
};

std::string pages() {
  Writer writer;
  for (int page = 0; page < 8; ++page) {
    writer.begin_page();
    if (page < 4) writer.table(25, 5);
    if (page == 4) writer.leave_room(320);
    if (page == 5) writer.calendar();
    writer.fill();
  }
  return writer.bytes();
}

cairo_status_t append(void* to, const unsigned char* data, unsigned size) {
  static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(data), size);
  return CAIRO_STATUS_SUCCESS;
}

void draw_primitives(cairo_t* cairo) {
  for (int i = 0; i < 150; ++i) {
    const double x = 20 + i % 15 * 30, y = 20 + i / 15 * 25;
    cairo_set_line_width(cairo, i % 3 == 0 ? 0.7 : 0.35);
    cairo_move_to(cairo, x, y);
    cairo_line_to(cairo, x + 22, y + 5);
    cairo_line_to(cairo, x + 11, y + 18);
    if (i % 2 == 0) cairo_close_path(cairo);
    cairo_stroke(cairo);
  }
}

void draw_labels(cairo_t* cairo) {
  Words words;
  cairo_set_font_size(cairo, 8);
  for (int i = 0; i < 40; ++i) {
    cairo_move_to(cairo, 20 + i % 5 * 95, 30 + i / 5 * 32);
    cairo_show_text(cairo, (words.next() + " " + std::to_string(i)).c_str());
  }
}

// The figure as a page of its own, by Cairo.
std::string figure() {
  std::string out;
  FT_Library library;
  FT_Init_FreeType(&library);
  FT_Face face;
  FT_New_Face(library, font_file, 0, &face);
  cairo_font_face_t* font = cairo_ft_font_face_create_for_ft_face(face, 0);
  cairo_surface_t* surface = cairo_pdf_surface_create_for_stream(append, &out, 500, 300);
  cairo_t* cairo = cairo_create(surface);
  cairo_set_font_face(cairo, font);
  draw_primitives(cairo);
  draw_labels(cairo);
  cairo_destroy(cairo);
  cairo_surface_finish(surface);
  cairo_surface_destroy(surface);
  cairo_font_face_destroy(font);
  return out;
}

// Puts the figure on the fifth page, as qpdf's own example does it, and writes the file.
void join(const std::string& pages, const std::string& figure, const char* path) {
  QPDF document, drawn;
  document.processMemoryFile("pages", pages.data(), pages.size());
  drawn.processMemoryFile("figure", figure.data(), figure.size());
  QPDFPageObjectHelper page = QPDFPageDocumentHelper(document).getAllPages().at(4);
  QPDFPageObjectHelper source = QPDFPageDocumentHelper(drawn).getAllPages().at(0);
  QPDFObjectHandle form = document.copyForeignObject(source.getFormXObjectForPage());
  const QPDFObjectHandle::Rectangle where(margin, 450, margin + 500, 750);
  const std::string content = page.placeFormXObject(form, "/Figure", where);
  QPDFObjectHandle resources = page.getAttribute("/Resources", true);
  resources.mergeResources(QPDFObjectHandle::parse("<< /XObject << >> >>"));
  resources.getKey("/XObject").replaceKey("/Figure", form);
  page.addPageContents(document.newStream("q\n"), true);
  page.addPageContents(document.newStream("\nQ\n" + content), false);
  QPDFWriter writer(document, path);
  writer.write();
}

}  // namespace

int main(int count, char** arguments) {
  if (count != 2) return std::fputs("usage: bare_writer FILE.pdf\n", stderr), 2;
  join(pages(), figure(), arguments[1]);
}
