"""From the errors of heights to contour intervals and pass spacings, and back.

An interval is supported when the RMSE of the surface's heights is at most a third of it: RMSEz = interval / 3 is the
rule of equivalence in the ASPRS Positional Accuracy Standards for Digital Geospatial Data, edition 1 (2014), annex B.

The error of a surface between passes is estimated by our own reasoning, from no standard: on ground of constant second
derivative c across a gap D, linear interpolation at x is off by c x (D - x) / 2, whose root mean square is
c D² / (2 √30); and it takes (1 - t)² + t² of the variance of the heights on either side, 2/3 on average.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import PointSet
from ..units import LengthUnit

#: RMSEz as a share of the contour interval (ASPRS edition 1, 2014, annex B).
RMSE_SHARE = 1.0 / 3.0
#: Mean share of the variance of two heights that linear interpolation between them takes over.
NOISE_SHARE = 2.0 / 3.0
_BEND = 1.0 / (2.0 * math.sqrt(30.0))
_USUAL = (1.0, 2.0, 2.5, 5.0, 10.0)

FROM_CHECKS = Text("interval.from_checks", QT_TRANSLATE_NOOP("core", "independent check points"))
FROM_REPEATS = Text("interval.from_repeats", QT_TRANSLATE_NOOP("core", "repeated ground"))
FROM_CLAIMS = Text("interval.from_claims", QT_TRANSLATE_NOOP("core", "what the receiver states"))
SUPPORTED = Text(
    "interval.supported",
    QT_TRANSLATE_NOOP(
        "core",
        "Smallest contour interval the data support: {interval:g} {unit} (RMSEz {rmse:.3f} m from {basis}; RMSEz = "
        "interval / 3, ASPRS Positional Accuracy Standards, 2014, annex B).",
    ),
)
SPACING_COUNTS = Text(
    "interval.spacing_counts",
    QT_TRANSLATE_NOOP(
        "core",
        "Of that, {bend:.3f} m comes from the ground between passes {spacing:.1f} m apart (estimated here from the "
        "bends seen along the passes, by no standard); forms narrower than about {narrow:.0f} m are not in the data.",
    ),
)
NO_BASIS = Text(
    "interval.no_basis",
    QT_TRANSLATE_NOOP(
        "core", "No contour interval can be vouched for: neither check points nor repeats nor stated errors are known."
    ),
)


@dataclass(frozen=True)
class SupportedInterval:
    """The smallest honest contour interval.

    ``interval``: metres, 3 times ``rmse``; ``usual``: the next of 1, 2, 2.5, 5 times a power of ten in ``unit``.
    ``rmse``: metres, by ``basis``. ``bend``: the part of it from ground between passes (m), nan where not estimated.
    """

    interval: float
    usual: float
    unit: LengthUnit
    rmse: float
    bend: float
    basis: Text
    messages: Tuple[Message, ...]


def interpolation_error(curvature: float, spacing: float) -> float:
    """RMS error (m) of linear interpolation over gaps of ``spacing`` m; ``curvature``: second derivative, 1/m."""
    return _BEND * abs(curvature) * spacing**2


def surface_error(sigma: float, curvature: float, spacing: float) -> float:
    """RMS error (m) of a surface from heights of standard deviation ``sigma`` (m) on passes ``spacing`` m apart."""
    return math.sqrt(NOISE_SHARE * sigma**2 + interpolation_error(curvature, spacing) ** 2)


def spacing_for(error: float, sigma: float, curvature: float) -> float:
    """The spacing (m) at which :func:`surface_error` is ``error``; infinite on plane ground, nan if noise is more."""
    left = error**2 - NOISE_SHARE * sigma**2
    if left < 0:
        return float("nan")
    return math.sqrt(math.sqrt(left) / (_BEND * abs(curvature))) if curvature else math.inf


def interval_of(rmse: float) -> float:
    """The contour interval (m) that an RMSE of heights (m) is equivalent to."""
    return rmse / RMSE_SHARE


def rmse_of(interval: float) -> float:
    """The RMSE of heights (m) that a contour interval (m) asks for."""
    return interval * RMSE_SHARE


def usual_interval(interval: float, unit: LengthUnit = LengthUnit.METRE) -> float:
    """The smallest of 1, 2, 2.5, 5 times a power of ten, in ``unit``, that is not below ``interval`` metres (> 0)."""
    wanted = interval / unit.metres
    power = 10.0 ** math.floor(math.log10(wanted))
    found = next(factor for factor in (*_USUAL, 20.0) if factor * power >= wanted * (1 - 1e-9))
    return float(f"{found * power:.6g}")


def claimed_sigma(points: PointSet) -> float:
    """Root mean square of the standard deviations of height (m) stated for the used points; nan where none is."""
    stated = points.sigma_v[points.used]
    stated = stated[np.isfinite(stated)]
    return float(np.sqrt(np.mean(stated**2))) if len(stated) else float("nan")


def supported_interval(
    spacing: float,
    curvature: float,
    *,
    checked_rmse: Optional[float] = None,
    repeat_sigma: Optional[float] = None,
    claimed: Optional[float] = None,
    unit: LengthUnit = LengthUnit.METRE,
) -> Optional[SupportedInterval]:
    """The smallest contour interval the data support; None where no error is known.

    ``spacing``: of the passes, m; ``curvature``: of the ground, 1/m (nan: not known). ``checked_rmse``: RMSE of the
    surface against independent check points, m, which holds every error. ``repeat_sigma``, ``claimed``: standard
    deviation of one height from repeats or as the receiver states, m; the better basis is taken, and the ground
    between the passes added. Where both check points and another basis are known, the larger RMSE counts.
    """
    bend = interpolation_error(curvature, spacing) if math.isfinite(curvature * spacing) else float("nan")
    found: List[Tuple[float, Text]] = []
    for sigma, basis in ((repeat_sigma, FROM_REPEATS), (claimed, FROM_CLAIMS)):
        if sigma is not None and math.isfinite(sigma) and not found:
            found.append((math.hypot(math.sqrt(NOISE_SHARE) * sigma, 0.0 if math.isnan(bend) else bend), basis))
    if checked_rmse is not None and math.isfinite(checked_rmse):
        found.append((checked_rmse, FROM_CHECKS))
    if not found:
        return None
    rmse, basis = max(found, key=lambda each: each[0])
    interval = interval_of(rmse)
    usual = usual_interval(interval, unit) if interval > 0 else 0.0
    said = [message(SUPPORTED, interval=usual, unit=unit.symbol, rmse=rmse, basis=basis)]
    if not math.isnan(bend) and basis is not FROM_CHECKS:
        said.append(message(SPACING_COUNTS, bend=bend, spacing=spacing, narrow=2 * spacing))
    return SupportedInterval(interval, usual, unit, rmse, bend, basis, tuple(said))
