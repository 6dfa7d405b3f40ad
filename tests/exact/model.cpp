#include "model.h"

#include <glpk.h>

#include <cmath>
#include <memory>
#include <random>

namespace loamsheet::tests {
namespace {

class Draw {
 public:
  explicit Draw(std::uint32_t seed) : numbers_(seed) {}
  // A whole number between two ends, the same on every machine.
  int operator()(int low, int high) {
    return low + static_cast<int>(numbers_() % static_cast<std::uint32_t>(high - low + 1));
  }

 private:
  std::mt19937 numbers_;
};

Millimetres length(Draw& draw, int low, int high) {
  return {static_cast<double>(draw(low, high))};
}

ToPlace drawn_plant(Draw& draw) {
  ToPlace plant;
  Needs& needs = plant.needs;
  needs.habit = static_cast<Habit>(draw(0, 6));
  needs.mountable = needs.habit == Habit::epiphyte || draw(0, 1) == 1;
  needs.height.low = length(draw, 0, 150);
  needs.height.high = needs.height.low + length(draw, 20, 300);
  needs.spread = length(draw, 80, 260), needs.root = length(draw, 10, 60);
  needs.ppfd.low = draw(5, 150), needs.ppfd.high = needs.ppfd.low * 4;
  needs.humidity = Fraction{draw(30, 90) / 100.0};
  return plant;
}

Site drawn_site(Draw& draw) {
  Site site;
  site.kind = draw(0, 3) == 0 ? SiteKind::mount : SiteKind::floor;
  const double up = site.kind == SiteKind::mount ? draw(150, 500) : 100;
  site.at = {double(draw(0, 900)), double(draw(0, 450)), up};
  site.root = 70_mm, site.headroom = {600 - up}, site.drop = {up - 100};
  site.wall = {std::min({site.at.x, 900 - site.at.x, site.at.y, 450 - site.at.y})};
  site.support = {std::min({site.at.x, 900 - site.at.x, 450 - site.at.y})};
  site.across = site.at.x / 900, site.back = site.at.y / 450, site.up = site.drop.v / 500;
  site.light.ppfd = draw(10, 300);
  const double air = draw(50, 95) / 100.0;
  site.humidity = {{air}, {air}};
  return site;
}

struct FreeProblem {
  void operator()(glp_prob* p) const { glp_delete_prob(p); }
};

// A binary for each plant and site it may take; each plant at most once; two that clash not both;
// what shade costs a pair is a continuous variable that the pair's binaries press up.
class Model {
 public:
  explicit Model(const PlacementTask& task) : task_(task), problem_(glp_create_prob()) {
    glp_set_obj_dir(problem_.get(), GLP_MAX);
    for (size_t i = 0; i < task.count(); ++i) add_plant(i);
    for (size_t i = 0; i < task.count(); ++i) {
      for (size_t j = 0; j < task.count(); ++j) {
        if (i != j) add_clashes(i, j);
        if (i < j) add_shade(i, j);
      }
    }
  }

  long solve() {
    glp_iocp how;
    glp_init_iocp(&how);
    glp_term_out(GLP_OFF);
    how.presolve = GLP_ON, how.msg_lev = GLP_MSG_OFF, how.mip_gap = 0;
    how.gmi_cuts = how.clq_cuts = GLP_ON;
    if (glp_intopt(problem_.get(), &how) != 0) return -1;
    if (glp_mip_status(problem_.get()) != GLP_OPT) return -1;
    return std::lround(glp_mip_obj_val(problem_.get()));
  }

 private:
  struct Term {
    int column;
    double factor;
  };

  int add_column(double objective, bool binary) {
    const int column = glp_add_cols(problem_.get(), 1);
    glp_set_obj_coef(problem_.get(), column, objective);
    if (binary) {
      glp_set_col_kind(problem_.get(), column, GLP_BV);
    } else {
      glp_set_col_bnds(problem_.get(), column, GLP_LO, 0, 0);
    }
    return column;
  }

  void at_most(const std::vector<Term>& terms, double limit) {
    const int row = glp_add_rows(problem_.get(), 1);
    glp_set_row_bnds(problem_.get(), row, GLP_UP, 0, limit);
    std::vector<int> columns{0};
    std::vector<double> factors{0};
    for (const Term& term : terms) columns.push_back(term.column), factors.push_back(term.factor);
    glp_set_mat_row(problem_.get(), row, static_cast<int>(terms.size()), columns.data(),
                    factors.data());
  }

  void add_plant(size_t i) {
    std::vector<Term> once;
    columns_.emplace_back();
    for (const SiteWorth& spot : task_.spots(i)) {
      columns_[i].push_back(add_column(static_cast<double>(spot.worth), true));
      once.push_back({columns_[i].back(), 1});
    }
    if (!once.empty()) at_most(once, 1);
  }

  void add_clashes(size_t i, size_t j) {
    for (size_t s = 0; s < columns_[i].size(); ++s) {
      std::vector<Term> terms{{columns_[i][s], 1}};
      for (size_t t = 0; t < columns_[j].size(); ++t) {
        if (task_.clash(i, task_.spots(i)[s].site, j, task_.spots(j)[t].site)) {
          terms.push_back({columns_[j][t], 1});
        }
      }
      if (terms.size() > 1) at_most(terms, 1);
    }
  }

  // cost >= sum over t of c(s, t) x(j, t) - most (1 - x(i, s)), for every s.
  void add_shade(size_t i, size_t j) {
    int cost = 0;
    for (size_t s = 0; s < columns_[i].size(); ++s) {
      std::vector<Term> terms;
      double most = 0;
      for (size_t t = 0; t < columns_[j].size(); ++t) {
        const double pair =
            static_cast<double>(task_.cost(i, task_.spots(i)[s].site, j, task_.spots(j)[t].site));
        if (pair <= 0) continue;
        terms.push_back({columns_[j][t], pair});
        most = std::max(most, pair);
      }
      if (terms.empty()) continue;
      if (cost == 0) cost = add_column(-1, false);
      terms.push_back({columns_[i][s], most});
      terms.push_back({cost, -1});
      at_most(terms, most);
    }
  }

  const PlacementTask& task_;
  std::unique_ptr<glp_prob, FreeProblem> problem_;
  std::vector<std::vector<int>> columns_;  // by plant, in the order of its spots
};

}  // namespace

Case drawn_case(std::uint32_t number, int plants, int sites) {
  Draw draw(number);
  Case drawn;
  while (static_cast<int>(drawn.plants.size()) < plants) {
    const bool like = !drawn.plants.empty() && draw(0, 3) == 0;
    drawn.plants.push_back(like ? drawn.plants.back() : drawn_plant(draw));
  }
  for (int i = 0; i < sites; ++i) drawn.sites.push_back(drawn_site(draw));
  return drawn;
}

long exact_score(const Case& drawn) {
  const PlacementTask task(drawn.plants, drawn.sites, drawn.lamp);
  return Model(task).solve();
}

}  // namespace loamsheet::tests
