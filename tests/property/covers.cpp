// The cheapest cover of a need against an integer program solved exactly by another program.
#include <glpk.h>

#include <cmath>

#include "laws.h"
#include "plan/choose/cheapest_cover.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

// min sum price x count, subject to sum size x count >= need and, when a price is given, sum price
// x count = it with the least left over as the goal. Sizes and needs are whole here.
class Program {
 public:
  Program(double need, const std::vector<PackKind>& kinds) : kinds_(kinds) {
    glp_term_out(GLP_OFF);
    p_ = glp_create_prob();
    glp_set_obj_dir(p_, GLP_MIN);
    glp_add_rows(p_, 2);
    glp_set_row_bnds(p_, 1, GLP_LO, need, 0);
    glp_set_row_bnds(p_, 2, GLP_LO, 0, 0);
    glp_add_cols(p_, static_cast<int>(kinds.size()));
    for (int i = 0; i < static_cast<int>(kinds.size()); ++i) add_column(i);
  }
  ~Program() { glp_delete_prob(p_); }
  Program(const Program&) = delete;

  // The least price; nothing when the packs are not enough.
  std::optional<Money> least_price() {
    set_goal([](const PackKind& k) { return static_cast<double>(k.price.v); });
    const auto least = solved();
    return least ? std::optional(Money{std::llround(*least)}) : std::nullopt;
  }

  // The least that covers at that price hold.
  double least_held(Money price) {
    const auto v = static_cast<double>(price.v);
    glp_set_row_bnds(p_, 2, GLP_FX, v, v);
    set_goal([](const PackKind& k) { return k.size; });
    return *solved();
  }

 private:
  void add_column(int i) {
    const PackKind& kind = kinds_[static_cast<size_t>(i)];
    glp_set_col_kind(p_, i + 1, GLP_IV);
    glp_set_col_bnds(p_, i + 1, kind.available > 0 ? GLP_DB : GLP_FX, 0, kind.available);
    const int rows[] = {0, 1, 2};
    const double values[] = {0, kind.size, static_cast<double>(kind.price.v)};
    glp_set_mat_col(p_, i + 1, 2, rows, values);
  }

  template <class Goal>
  void set_goal(Goal goal) {
    for (int i = 0; i < static_cast<int>(kinds_.size()); ++i) {
      glp_set_obj_coef(p_, i + 1, goal(kinds_[static_cast<size_t>(i)]));
    }
  }

  std::optional<double> solved() {
    glp_iocp how;
    glp_init_iocp(&how);
    how.presolve = GLP_ON;
    if (glp_intopt(p_, &how) != 0 || glp_mip_status(p_) != GLP_OPT) return std::nullopt;
    return glp_mip_obj_val(p_);
  }

  const std::vector<PackKind>& kinds_;
  glp_prob* p_ = nullptr;
};

std::vector<PackKind> drawn_kinds() {
  std::vector<PackKind> kinds;
  for (int i = drawn(20, 60); i > 0; --i) {
    const int size = drawn(1, 80);
    kinds.push_back(
        {static_cast<double>(size), Money{size * std::int64_t{drawn(50, 150)}}, drawn(0, 4)});
  }
  return kinds;
}

}  // namespace

TEST_CASE("the cover of a large need is the one that an integer program finds") {
  holds("price and amount", [] {
    const auto kinds = drawn_kinds();
    const double need = drawn(50, 900);
    Program program(need, kinds);
    const auto price = program.least_price();
    const auto counts = cheapest_cover(need, kinds);
    RC_ASSERT(counts.has_value() == price.has_value());
    if (!price) return;
    Money cost;
    double held = 0;
    for (size_t i = 0; i < kinds.size(); ++i) {
      RC_ASSERT((*counts)[i] <= kinds[i].available);
      cost += kinds[i].price * (*counts)[i];
      held += kinds[i].size * (*counts)[i];
    }
    RC_ASSERT(cost == *price);
    RC_ASSERT(std::fabs(held - program.least_held(*price)) < 1e-6);
  });
}
