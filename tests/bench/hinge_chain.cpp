// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/hinge_chain.h"

#include <mujoco/mjxmacro.h>
#include <mujoco/mujoco.h>

#include <algorithm>
#include <charconv>
#include <cstring>
#include <stdexcept>
#include <string>

namespace grainwise::bench {
namespace {

constexpr double kPointInertia = 2e-15;  // the least that it accepts for a moving body

std::string text(double value) {
  char buffer[40];
  return {buffer, std::to_chars(buffer, buffer + sizeof buffer, value).ptr};
}

/// Two links, the pattern of all others: its files nest a body a link and stop at a hundred.
mjModel* twoLinks(const CastModel& model, double step_s) {
  const std::string link = text(model.link_m);
  const auto body = [&](const std::string& at, const std::string& inside) {
    return "<body pos=\"" + at + " 0 0\"><joint type=\"hinge\" axis=\"0 -1 0\"/><inertial pos=\"" +
           link + " 0 0\" mass=\"1\" diaginertia=\"1 1 1\"/>" + inside + "</body>";
  };
  const std::string xml =
      "<mujoco><compiler angle=\"radian\"/><option gravity=\"" + text(model.gravityX_m_per_s2) +
      " 0 " + text(model.gravityY_m_per_s2) + "\" integrator=\"RK4\" timestep=\"" + text(step_s) +
      "\"><flag contact=\"disable\" constraint=\"disable\"/></option><worldbody>" +
      body("0", body(link, "")) + "</worldbody></mujoco>";
  const auto files = std::make_unique<mjVFS>();
  mj_defaultVFS(files.get());
  mj_makeEmptyFileVFS(files.get(), "chain.xml", static_cast<int>(xml.size()));
  std::memcpy(files->filedata[mj_findFileVFS(files.get(), "chain.xml")], xml.data(), xml.size());
  char error[500] = "";
  mjModel* made = mj_loadXML("chain.xml", files.get(), error, sizeof error);
  mj_deleteVFS(files.get());
  if (made == nullptr) throw std::runtime_error(error);
  return made;
}

}  // namespace

struct HingeChain::Parts {
  mjModel* pattern;
  mjModel model;
  std::vector<std::vector<char>> arrays;
  mjData* data = nullptr;

  Parts(const CastModel& chain, double step_s) : pattern(twoLinks(chain, step_s)), model(*pattern) {
    const int n = static_cast<int>(chain.links());
    model.nbody = n + 1;
    model.njnt = model.nq = model.nv = n;
    model.nM = n * (n + 1) / 2;
    model.nD = 2 * model.nM - n;
    model.nstack = 64 * n * n + 1000000;
    stretch();
    number(chain);
    data = mj_makeData(&model);
    mj_setConst(&model, data);
    mj_resetData(&model, data);
  }
  ~Parts() {
    mj_deleteData(data);
    mj_deleteModel(pattern);
  }

  /// Every array at its new length, its last row repeated.
  void stretch() {
#undef MJ_M
#define MJ_M(size) pattern->size
#define X(Type, name, rows, columns)                                                   \
  {                                                                                    \
    const auto width = sizeof(Type) * static_cast<std::size_t>(columns);               \
    const auto had = static_cast<std::size_t>(pattern->rows);                          \
    const auto wanted = static_cast<std::size_t>(model.rows);                          \
    auto& array = arrays.emplace_back(std::max<std::size_t>(1, width * wanted));       \
    for (std::size_t i = 0; had > 0 && i < wanted; ++i) {                              \
      const char* row =                                                                \
          reinterpret_cast<const char*>(pattern->name) + width * std::min(i, had - 1); \
      std::memcpy(array.data() + width * i, row, width);                               \
    }                                                                                  \
    model.name = reinterpret_cast<Type*>(array.data());                                \
  }
    MJMODEL_POINTERS
#undef X
#undef MJ_M
  }

  void number(const CastModel& chain) {
    for (int k = 0; k < model.nv; ++k) {
      const int body = k + 1;
      model.body_parentid[body] = k;
      model.body_rootid[body] = 1;
      model.body_weldid[body] = body;
      model.body_jntadr[body] = model.body_dofadr[body] = k;
      model.body_simple[body] = 0;
      model.body_mass[body] = chain.nodeMass_kg[static_cast<std::size_t>(body)];
      std::fill_n(model.body_inertia + 3 * body, 3, kPointInertia);
      model.jnt_qposadr[k] = model.jnt_dofadr[k] = model.dof_jntid[k] = k;
      model.jnt_bodyid[k] = model.dof_bodyid[k] = body;
      model.dof_parentid[k] = k - 1;
      model.dof_Madr[k] = k * (k + 1) / 2;
      model.dof_simplenum[k] = 0;
    }
  }
};

HingeChain::HingeChain(const CastModel& model, double step_s)
    : m_parts(std::make_unique<Parts>(model, step_s)) {
  mju_user_warning = [](const char*) {};  // a step that is too long shows in its error
  for (std::size_t k = 0; k < model.links(); ++k) {
    const auto turn = [k](const std::vector<double>& of) {
      return of[k] - (k > 0 ? of[k - 1] : 0);
    };
    m_parts->data->qpos[k] = turn(model.startAngle_rad);
    m_parts->data->qvel[k] = turn(model.startRate_rad_per_s);
  }
}

HingeChain::~HingeChain() = default;

void HingeChain::step() {
  mj_step(&m_parts->model, m_parts->data);
}

void HingeChain::run(double span_s) {
  double& step_s = m_parts->model.opt.timestep;
  const double usual_s = step_s;
  while (m_parts->data->time + step_s < span_s - 1e-12) step();
  step_s = span_s - m_parts->data->time;
  step();
  step_s = usual_s;
}

std::vector<double> HingeChain::angles() const {
  std::vector<double> all(static_cast<std::size_t>(m_parts->model.nv));
  double sum = 0.0;
  for (std::size_t k = 0; k < all.size(); ++k) all[k] = sum += m_parts->data->qpos[k];
  return all;
}

}  // namespace grainwise::bench
