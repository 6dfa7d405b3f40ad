#include "draw/draw.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>

#include <cmath>

#include "draw/canvas.h"

namespace loamsheet {
namespace {

constexpr double points_per_mm = 72 / 25.4, dots_per_mm = 200 / 25.4;

// No clock may reach a file: Cairo writes this date unless it is given another.
constexpr const char* fixed_date = "2000-01-01T00:00:00Z";

cairo_status_t append(void* to, const unsigned char* data, unsigned length) {
  static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(data), length);
  return CAIRO_STATUS_SUCCESS;
}

// Cairo numbers its surfaces through the whole run; a file must not tell how many came before.
void name_surface(std::string& svg) {
  const std::string start = "<g id=\"surface";
  const size_t at = svg.find(start);
  if (at == std::string::npos) return;
  const size_t number = at + start.size();
  svg.replace(number, svg.find('"', number) - number, "1");
}

// Paints on a surface with so many units a millimetre; says what went wrong, if anything did.
cairo_status_t paint_on(cairo_surface_t* surface, double units, const Figure& figure,
                        const std::pair<const Typefaces&, const CanvasFaces&>& with) {
  const ContextPtr context(cairo_create(surface));
  cairo_scale(context.get(), units, units);
  paint({context.get(), with.first, with.second}, figure);
  return cairo_status(context.get());
}

Outcome<std::string> result(cairo_status_t status, std::string bytes) {
  if (status != CAIRO_STATUS_SUCCESS) {
    return failure<std::string>(broken(cairo_status_to_string(status)));
  }
  return {std::move(bytes), {}};
}

cairo_status_t draw_pages(cairo_surface_t* pdf, const Figures& figures, const Typefaces& type,
                          const CanvasFaces& faces) {
  cairo_pdf_surface_restrict_to_version(pdf, CAIRO_PDF_VERSION_1_4);
  cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_CREATE_DATE, fixed_date);
  for (const Figure& f : figures.all) {
    cairo_pdf_surface_set_size(pdf, f.width * points_per_mm, f.height * points_per_mm);
    const cairo_status_t status = paint_on(pdf, points_per_mm, f, {type, faces});
    if (status != CAIRO_STATUS_SUCCESS) return status;
    cairo_surface_show_page(pdf);
  }
  cairo_surface_finish(pdf);
  return cairo_surface_status(pdf);
}

}  // namespace

Diagnostic broken(const std::string& what) {
  Diagnostic d;
  d.message = "the figure could not be drawn: " + what;
  d.fault = Fault::internal;
  return d;
}

Outcome<std::string> draw_pdf(const Figures& figures, const Typefaces& type) {
  const CanvasFaces faces(type, figures.all);
  if (!faces.problems().empty()) return {std::nullopt, faces.problems()};
  std::string bytes;
  const SurfacePtr pdf(cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1));
  const cairo_status_t status = draw_pages(pdf.get(), figures, type, faces);
  return result(status, std::move(bytes));
}

Outcome<std::string> draw_svg(const Figure& f, const Typefaces& type) {
  const CanvasFaces faces(type, {&f, 1});
  if (!faces.problems().empty()) return {std::nullopt, faces.problems()};
  std::string bytes;
  const SurfacePtr svg(cairo_svg_surface_create_for_stream(append, &bytes, f.width * points_per_mm,
                                                           f.height * points_per_mm));
  cairo_status_t status = paint_on(svg.get(), points_per_mm, f, {type, faces});
  cairo_surface_finish(svg.get());
  if (status == CAIRO_STATUS_SUCCESS) status = cairo_surface_status(svg.get());
  name_surface(bytes);
  return result(status, std::move(bytes));
}

Outcome<std::string> draw_png(const Figure& f, const Typefaces& type) {
  const CanvasFaces faces(type, {&f, 1});
  if (!faces.problems().empty()) return {std::nullopt, faces.problems()};
  const SurfacePtr image(cairo_image_surface_create(
      CAIRO_FORMAT_RGB24, static_cast<int>(std::ceil(f.width * dots_per_mm)),
      static_cast<int>(std::ceil(f.height * dots_per_mm))));
  const ContextPtr white(cairo_create(image.get()));
  cairo_set_source_rgb(white.get(), 1, 1, 1);
  cairo_paint(white.get());
  cairo_status_t status = paint_on(image.get(), dots_per_mm, f, {type, faces});
  std::string bytes;
  if (status == CAIRO_STATUS_SUCCESS) {
    status = cairo_surface_write_to_png_stream(image.get(), append, &bytes);
  }
  return result(status, std::move(bytes));
}

}  // namespace loamsheet
