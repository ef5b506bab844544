// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/cast.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/numerics/chain.h"
#include "core/numerics/ode.h"
#include "core/numerics/root.h"
#include "core/numerics/wide.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kLongestStep_s = 1e-3;
constexpr double kOscillation = 1.45;              // of RK4's 2.82 on the imaginary axis
constexpr double kDamping = 1.6;                   // of its 2.78 on the real axis
constexpr double kGauss = 0.28867513459481288225;  // 1/sqrt(12), the Gauss points from the middle
constexpr double kTurn_rad = 0.07;                 // most that a link may turn in a step

/// In four strands, so that the additions overlap.
double sum(const std::vector<double>& terms) {
  double strand[4] = {0.0, 0.0, 0.0, 0.0};
  const std::size_t n = terms.size();
  std::size_t k = 0;
  for (; k + 4 <= n; k += 4) {
    for (std::size_t j = 0; j < 4; ++j) strand[j] += terms[k + j];
  }
  for (; k < n; ++k) strand[0] += terms[k];
  return (strand[0] + strand[1]) + (strand[2] + strand[3]);
}

/// The unknowns in one row: N angles, N rates, then what was lost to line drag, fly drag, bending.
class Line {
 public:
  explicit Line(const CastModel& model)
      : m_model(model),
        m_links(model.links()),
        m_chain(model.link_m, model.nodeMass_kg),
        m_across(m_links),
        m_along(m_links),
        m_dragX(m_links),
        m_dragY(m_links),
        m_twist(m_links),
        m_power(m_links),
        m_couple(m_links + 1, 0.0) {
    const double half = 0.5 * model.airDensity_kg_per_m3 * model.link_m;
    for (std::size_t k = 0; k < m_links; ++k) {
      m_across[k] = half * model.acrossDrag * model.diameter_m[k];
      m_along[k] = half * std::numbers::pi * model.alongDrag * model.diameter_m[k];
    }
  }

  [[nodiscard]] std::size_t unknowns() const { return 2 * m_links + 3; }
  [[nodiscard]] std::vector<double> start() const {
    std::vector<double> y(m_model.startAngle_rad);
    y.insert(y.end(), m_model.startRate_rad_per_s.begin(), m_model.startRate_rad_per_s.end());
    y.resize(unknowns(), 0.0);
    return y;
  }

  void slope(const double* y, double* dy);
  /// The longest sound step from the state last given to `slope`.
  [[nodiscard]] double step_s(const double* rate) const;
  [[nodiscard]] CastEnergy energy(const std::vector<double>& y);
  void place(const std::vector<double>& y, std::vector<double>& x, std::vector<double>& height);
  [[nodiscard]] double flySpeed(const std::vector<double>& y);
  [[nodiscard]] const std::vector<double>& tension_N() const { return m_chain.tension_N(); }

 private:
  double lineDrag(const double* rate);
  double flyDrag();
  double bend(const double* angle, const double* rate);
  void gather();

  const CastModel& m_model;
  std::size_t m_links;
  numerics::Chain m_chain;
  std::vector<double> m_across, m_along;  // 1/2 rho C d h of each link
  std::vector<double> m_dragX, m_dragY;   // of each link, in the middle of it
  std::vector<double> m_twist;            // its couple on the link, over h
  std::vector<double> m_power;
  std::vector<double> m_couple;  // at joint k; 0 at both ends
  double m_flyX = 0.0, m_flyY = 0.0;
};

/// Drag of each link at two Gauss points, since the speed across runs linearly along it; returns
/// the power that it takes (W).
GRAINWISE_WIDE double Line::lineDrag(const double* rate) {
  const double* c = m_chain.cosine();
  const double* s = m_chain.sine();
  const double* vx = m_chain.velocityX_m_per_s();
  const double* vy = m_chain.velocityY_m_per_s();
  double* fx = m_dragX.data();
  double* fy = m_dragY.data();
  double* twist = m_twist.data();
  const double* across = m_across.data();
  const double* along = m_along.data();
  const double reach = kGauss * m_model.link_m;
  double* power = m_power.data();
  const std::size_t n = m_links;
  GRAINWISE_APART
  for (std::size_t k = 0; k < n; ++k) {
    const double mx = 0.5 * (vx[k] + vx[k + 1]);
    const double my = 0.5 * (vy[k] + vy[k + 1]);
    const double t = c[k] * mx + s[k] * my;
    const double w = c[k] * my - s[k] * mx;
    const double near = w - reach * rate[k];
    const double far = w + reach * rate[k];
    const double fn = -0.5 * across[k] * std::abs(near) * near;
    const double ff = -0.5 * across[k] * std::abs(far) * far;
    const double ft = -along[k] * std::abs(t) * t;
    fx[k] = c[k] * ft - s[k] * (fn + ff);
    fy[k] = s[k] * ft + c[k] * (fn + ff);
    twist[k] = kGauss * (ff - fn);
    power[k] = -(ft * t + fn * near + ff * far);
  }
  return sum(m_power);
}

double Line::flyDrag() {
  const double vx = m_chain.velocityX_m_per_s()[m_links];
  const double vy = m_chain.velocityY_m_per_s()[m_links];
  const double speed = std::sqrt(vx * vx + vy * vy);
  const double factor = 0.5 * m_model.airDensity_kg_per_m3 * m_model.flyDrag_m2 * speed;
  m_flyX = -factor * vx;
  m_flyY = -factor * vy;
  return factor * speed * speed;
}

/// Couples at the joints; returns the power that their damping takes (W).
GRAINWISE_WIDE double Line::bend(const double* angle, const double* rate) {
  const double* b = m_model.bending_N_m.data();
  double* couple = m_couple.data();
  const double eta = m_model.bendingTime_s;
  for (std::size_t k = 1; k < m_links; ++k) {
    couple[k] = b[k] * ((angle[k] - angle[k - 1]) + eta * (rate[k] - rate[k - 1]));
  }
  for (std::size_t k = 1; k < m_links; ++k) {
    const double opening = rate[k] - rate[k - 1];
    m_power[k] = eta * b[k] * opening * opening;
  }
  m_power[0] = 0.0;
  return sum(m_power);
}

/// Everything that acts on the nodes: a link's drag by halves, its couples Q_k as +-Q_k n_k/h.
GRAINWISE_WIDE void Line::gather() {
  const std::size_t n = m_links;
  const double* c = m_chain.cosine();
  const double* s = m_chain.sine();
  const double* dragX = m_dragX.data();
  const double* dragY = m_dragY.data();
  const double* twist = m_twist.data();
  const double* couple = m_couple.data();
  const double* mass = m_model.nodeMass_kg.data();
  double* fx = m_chain.forceX_N();
  double* fy = m_chain.forceY_N();
  const double inverse = 1.0 / m_model.link_m;
  const double gx = m_model.gravityX_m_per_s2;
  const double gy = m_model.gravityY_m_per_s2;
  GRAINWISE_APART
  for (std::size_t i = 1; i < n; ++i) {
    const double before = (couple[i] - couple[i - 1]) * inverse + twist[i - 1];
    const double after = (couple[i + 1] - couple[i]) * inverse + twist[i];
    fx[i] = mass[i] * gx + 0.5 * (dragX[i - 1] + dragX[i]) - (before * s[i - 1] - after * s[i]);
    fy[i] = mass[i] * gy + 0.5 * (dragY[i - 1] + dragY[i]) + (before * c[i - 1] - after * c[i]);
  }
  const double last = -couple[n - 1] * inverse + twist[n - 1];
  fx[n] = mass[n] * gx + 0.5 * dragX[n - 1] + m_flyX - last * s[n - 1];
  fy[n] = mass[n] * gy + 0.5 * dragY[n - 1] + m_flyY + last * c[n - 1];
}

void Line::slope(const double* y, double* dy) {
  const std::size_t n = m_links;
  const double* rate = y + n;
  m_chain.move(y, rate);
  dy[2 * n] = lineDrag(rate);
  dy[2 * n + 1] = flyDrag();
  dy[2 * n + 2] = bend(y, rate);
  gather();
  m_chain.solve(rate, dy + n);
  std::copy(rate, rate + n, dy);
}

GRAINWISE_WIDE double Line::step_s(const double* rate) const {
  const double h = m_model.link_m;
  const auto& tension = m_chain.tension_N();
  const double* vx = m_chain.velocityX_m_per_s();
  const double* vy = m_chain.velocityY_m_per_s();
  const double* b = m_model.bending_N_m.data();
  const double rho = m_model.airDensity_kg_per_m3;
  double swing2 = 0.0, damping = 0.0, turning = 0.0;
  for (std::size_t i = 1; i <= m_links; ++i) {
    const bool fly = i == m_links;
    const double inverse = 1.0 / m_model.nodeMass_kg[i];
    const double pull = std::abs(tension[i - 1]) + (fly ? 0.0 : std::abs(tension[i]));
    const double stiff = std::max(b[i - 1], fly ? 0.0 : b[i]) * 16.0 / (h * h);
    const double speed = std::sqrt(vx[i] * vx[i] + vy[i] * vy[i]);
    const double drag =
        rho * speed *
        (m_model.acrossDrag * m_model.diameter_m[i - 1] * h + (fly ? m_model.flyDrag_m2 : 0.0));
    swing2 = std::max(swing2, (2.0 * pull / h + stiff) * inverse);
    damping = std::max(damping, (drag + m_model.bendingTime_s * stiff) * inverse);
    turning = std::max(turning, std::abs(rate[i - 1]));
  }
  const double step = std::min(
      {kLongestStep_s, kOscillation / std::sqrt(swing2), kDamping / damping, kTurn_rad / turning});
  return std::isfinite(swing2 + damping + turning) ? step : 0.0;
}

CastEnergy Line::energy(const std::vector<double>& y) {
  const std::size_t n = m_links;
  m_chain.move(y.data(), y.data() + n);
  CastEnergy e;
  e.moving_J = m_chain.kineticEnergy_J();
  std::vector<double> px(n + 1), py(n + 1);
  m_chain.place(px.data(), py.data());
  for (std::size_t i = 1; i <= n; ++i) {
    e.lifted_J -= m_model.nodeMass_kg[i] *
                  (m_model.gravityX_m_per_s2 * px[i] + m_model.gravityY_m_per_s2 * py[i]);
  }
  for (std::size_t k = 1; k < n; ++k) {
    const double fold = y[k] - y[k - 1];
    e.bent_J += 0.5 * m_model.bending_N_m[k] * fold * fold;
  }
  e.toLineDrag_J = y[2 * n];
  e.toFlyDrag_J = y[2 * n + 1];
  e.toBending_J = y[2 * n + 2];
  return e;
}

void Line::place(const std::vector<double>& y, std::vector<double>& px, std::vector<double>& py) {
  m_chain.move(y.data(), y.data() + m_links);
  m_chain.place(px.data(), py.data());
}

double Line::flySpeed(const std::vector<double>& y) {
  m_chain.move(y.data(), y.data() + m_links);
  return std::hypot(m_chain.velocityX_m_per_s()[m_links], m_chain.velocityY_m_per_s()[m_links]);
}

/// How far the fly is ahead of everything else along the launch direction; negative before the
/// turn.
struct Lead {
  double ahead_m;
  std::size_t foremost;  ///< the node that is
};

Lead leadOf(const std::vector<double>& px) {
  const auto end = px.end() - 1;
  const auto foremost = std::max_element(px.begin(), end);
  return {px.back() - *foremost, static_cast<std::size_t>(foremost - px.begin())};
}

/// A run from the start to its end.
class Run {
 public:
  Run(const CastModel& model, const CastOptions& options)
      : m_model(model),
        m_options(options),
        m_line(model),
        m_rk4(m_line.unknowns()),
        m_y(m_line.start()),
        m_next(m_y),
        m_slope(m_y.size()),
        m_x(model.links() + 1),
        m_h(model.links() + 1) {}

  CastResult go(const std::stop_token& stop, const CastProgress& progress);

 private:
  [[nodiscard]] auto slopes() {
    return [this](const double* y, double* dy) { m_line.slope(y, dy); };
  }
  void keepFrame();
  void turnWithin(double step_s);
  void finish(CastStop stop);

  const CastModel& m_model;
  const CastOptions& m_options;
  Line m_line;
  numerics::Rk4 m_rk4;
  std::vector<double> m_y, m_next, m_slope, m_x, m_h;
  double m_time_s = 0.0;
  CastResult m_result;
};

void Run::keepFrame() {
  CastFrame frame;
  frame.time = Seconds(m_time_s);
  m_line.place(m_y, m_x, m_h);
  const double cosine = std::cos(m_model.launch_rad);
  const double sine = std::sin(m_model.launch_rad);
  frame.points.reserve(m_x.size());
  for (std::size_t i = 0; i < m_x.size(); ++i) {
    frame.points.push_back({si::toFeet(m_x[i] * cosine - m_h[i] * sine),
                            si::toFeet(m_model.rodTip_m + m_x[i] * sine + m_h[i] * cosine)});
  }
  frame.flySpeed = si::toFeetPerSecond(m_line.flySpeed(m_y));
  frame.energy = m_line.energy(m_y);
  if (m_options.tensions) {
    m_line.slope(m_y.data(), m_slope.data());
    frame.tension_N = m_line.tension_N();
  }
  m_result.frames.push_back(std::move(frame));
}

/// Goes to the moment within the step just tried at which the fly draws level with the foremost
/// point.
void Run::turnWithin(double step_s) {
  const auto aheadAfter = [&](double part_s) {
    m_rk4.step(m_y, m_slope, part_s, slopes(), m_next);
    m_line.place(m_next, m_x, m_h);
    return leadOf(m_x).ahead_m;
  };
  numerics::RootOptions options;
  options.xTolerance = 1e-12;
  options.fTolerance = 1e-12;
  m_line.place(m_y, m_x, m_h);
  const double before_m = leadOf(m_x).ahead_m;
  m_line.place(m_next, m_x, m_h);
  const double after_m = leadOf(m_x).ahead_m;
  const auto root = numerics::findRoot(aheadAfter, 0.0, before_m, step_s, after_m, options);
  m_rk4.step(m_y, m_slope, root.x, slopes(), m_next);
  m_y.swap(m_next);
  m_time_s += root.x;
}

void Run::finish(CastStop stop) {
  m_result.stop = stop;
  m_result.time = Seconds(m_time_s);
  m_result.flySpeed = si::toFeetPerSecond(m_line.flySpeed(m_y));
  m_line.place(m_y, m_x, m_h);
  m_result.endHeight = si::toFeet(m_model.rodTip_m + m_x.back() * std::sin(m_model.launch_rad) +
                                  m_h.back() * std::cos(m_model.launch_rad));
  m_result.end = m_line.energy(m_y);
  const auto middle = m_y.begin() + static_cast<std::ptrdiff_t>(m_model.links());
  m_result.angle_rad.assign(m_y.begin(), middle);
  m_result.rate_rad_per_s.assign(middle, middle + static_cast<std::ptrdiff_t>(m_model.links()));
  if (m_options.frameEvery > Seconds(0) && stop != CastStop::notFinite) keepFrame();
}

CastResult Run::go(const std::stop_token& stop, const CastProgress& progress) {
  constexpr double kProgressEvery_s = 0.02;
  const double every_s = m_options.frameEvery.value();
  const double until_s = m_options.until.value_or(m_options.longest).value();
  double frameAt_s = every_s > 0.0 ? 0.0 : until_s + 1.0;
  double progressAt_s = 0.0;
  m_result.start = m_line.energy(m_y);
  while (true) {
    if (stop.stop_requested()) return finish(CastStop::cancelled), m_result;
    if (m_time_s >= until_s) break;
    if (m_time_s >= frameAt_s) {
      keepFrame();
      frameAt_s += every_s * std::max(1.0, std::ceil((m_time_s - frameAt_s) / every_s));
    }
    m_line.slope(m_y.data(), m_slope.data());
    const double sound_s = m_options.stepShare * m_line.step_s(m_y.data() + m_model.links());
    if (!(sound_s > 0.0)) return finish(CastStop::notFinite), m_result;
    const double step_s = std::min(sound_s, until_s - m_time_s);
    m_rk4.step(m_y, m_slope, step_s, slopes(), m_next);
    ++m_result.steps;
    m_line.place(m_next, m_x, m_h);
    const Lead lead = leadOf(m_x);
    if (!std::isfinite(lead.ahead_m)) return finish(CastStop::notFinite), m_result;
    if (lead.ahead_m >= 0.0 && !m_options.until) {
      turnWithin(step_s);
      return finish(CastStop::turnedOver), m_result;
    }
    m_y.swap(m_next);
    m_time_s = step_s < sound_s ? until_s : m_time_s + step_s;
    if (progress && m_time_s >= progressAt_s) {
      progress(static_cast<double>(lead.foremost) / static_cast<double>(m_model.links()));
      progressAt_s = m_time_s + kProgressEvery_s;
    }
  }
  finish(m_options.until ? CastStop::timeReached : CastStop::noTurn);
  return m_result;
}

}  // namespace

CastResult unroll(const CastModel& model, const CastOptions& options, const std::stop_token& stop,
                  const CastProgress& progress) {
  return Run(model, options).go(stop, progress);
}

}  // namespace grainwise
