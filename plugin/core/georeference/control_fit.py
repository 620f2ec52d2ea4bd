"""A survey in local or assumed coordinates fitted to control points by least squares.

In plan a four-parameter similarity (two shifts, a turn, a scale), in height a shift or a tilted plane; or one
seven-parameter similarity in space. All of it about the centroids: national coordinates of millions of
metres lose no digits. Residuals are fitted minus control.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, Optional, Sequence, Tuple

import numpy as np
from scipy.spatial.transform import Rotation

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from .adjustment import Adjustment, adjust, snoop_points
from .control import ControlMatch
from .control_said import height_said, plan_said, space_said, verdict_said
from .record import Georeference, Georeferenced, Step
from .similarity import ControlFit, HeightFit, HeightPlane, Part, PlanSimilarity, SpaceSimilarity

TOO_FEW = Text(
    "control_fit.too_few",
    QT_TRANSLATE_NOOP("core", "{model} needs {needed} control points or more; {count} can be used: {names}."),
)
NO_HEIGHTS = Text(
    "control_fit.no_heights",
    QT_TRANSLATE_NOOP(
        "core",
        "{model} needs {needed} control points with heights or more; {count} can be used: {names}. Without them "
        "heights stay as they are: type --control-heights keep.",
    ),
)
UNDETERMINED = Text(
    "control_fit.undetermined",
    QT_TRANSLATE_NOOP(
        "core",
        "{model} is not determined by these control points ({names}): they lie together or on one line. Add one.",
    ),
)
NO_SUCH = Text(
    "control_fit.no_such", QT_TRANSLATE_NOOP("core", "'{name}' is to be left out, but is no matched control point.")
)
BAD_SIGMA = Text(
    "control_fit.bad_sigma", QT_TRANSLATE_NOOP("core", "A standard deviation of {value} m is none; give one above 0.")
)
NO_PLAN_WEIGHT = Text(
    "control_fit.both_sigmas",
    QT_TRANSLATE_NOOP("core", "A fit in space needs both standard deviations, in plan and in height, or neither."),
)
HEIGHT_KEPT = Text("control_fit.height_kept", QT_TRANSLATE_NOOP("core", "Heights are taken over as they are."))
PART_PLAN = Text("control_fit.plan", QT_TRANSLATE_NOOP("core", "Plan"))
PART_HEIGHT = Text("control_fit.height", QT_TRANSLATE_NOOP("core", "Height"))
PART_SPACE = Text("control_fit.space", QT_TRANSLATE_NOOP("core", "Space"))
FOUR = Text("control_fit.four", QT_TRANSLATE_NOOP("core", "A four-parameter fit"))
SEVEN = Text("control_fit.seven", QT_TRANSLATE_NOOP("core", "A seven-parameter fit"))
SHIFT = Text("control_fit.shift", QT_TRANSLATE_NOOP("core", "A shift of heights"))
PLANE = Text("control_fit.plane", QT_TRANSLATE_NOOP("core", "A plane for heights"))


def fit_plan(
    match: ControlMatch,
    heights: HeightFit = HeightFit.SHIFT,
    sigma_plan: Optional[float] = None,
    sigma_height: Optional[float] = None,
    leave_out: Sequence[str] = (),
    significance: float = 0.01,
) -> ControlFit:
    """Four parameters in plan, and ``heights`` as chosen.

    ``sigma_plan``, ``sigma_height``: standard deviation (m) of a coordinate of survey and control together;
    where None it is estimated from the residuals, and fewer errors can be told. ``leave_out``: names of control
    points to show but not use. ``significance``: see :func:`snoop_points`. Raises SurveyError for too few
    points, or points that do not determine the fit.
    """
    _check_sigmas(sigma_plan, sigma_height)
    used = _mask(match, leave_out)
    rows = np.flatnonzero(used)
    plan, part = _plan_part(match, rows, sigma_plan, significance)
    parts = [part]
    fitted = plan.apply(match.survey[:, :2])
    plane = None
    if heights is not HeightFit.KEEP:
        plane, part = _height_part(match, fitted, used, heights, sigma_height, significance)
        parts.append(part)
    said = [plan_said(plan, parts[0])]
    said.append(message(HEIGHT_KEPT) if plane is None else height_said(plane, parts[1], heights))
    return _finished(match, used, plan, plane, None, parts, said)


def fit_space(
    match: ControlMatch,
    sigma_plan: Optional[float] = None,
    sigma_height: Optional[float] = None,
    leave_out: Sequence[str] = (),
    significance: float = 0.01,
) -> ControlFit:
    """Seven parameters: three shifts, three turns and a scale. Arguments and errors as of :func:`fit_plan`.

    Turns may be of any size: the rotation is rigorous, not linearised. Easting, northing and height count as
    rectangular axes, so on a map grid the curvature of the Earth (8 cm at 1 km) stays in the residuals; geocentric
    coordinates, which have none, do as well. Points without a height on either side are not used.
    """
    _check_sigmas(sigma_plan, sigma_height)
    if (sigma_plan is None) != (sigma_height is None):
        raise SurveyError(NO_PLAN_WEIGHT)
    used = _mask(match, leave_out) & np.isfinite(match.survey[:, 2]) & np.isfinite(match.control[:, 2])
    rows = np.flatnonzero(used)
    _enough(match, rows, 3, SEVEN)
    sigma = None
    if sigma_plan is not None and sigma_height is not None:
        sigma = np.tile([sigma_plan, sigma_plan, sigma_height], len(rows))
    try:
        similarity, adjustment = _iterate(match.survey[rows], match.control[rows], sigma)
    except np.linalg.LinAlgError as error:
        raise SurveyError(UNDETERMINED, model=SEVEN, names=_names(match, rows)) from error
    test = snoop_points(adjustment, np.repeat(np.arange(len(rows)), 3), significance)
    part = Part(PART_SPACE, adjustment, test, rows)
    return _finished(match, used, None, None, similarity, [part], [space_said(similarity, part)])


def apply_control_fit(points: PointSet, fit: ControlFit, crs: Optional[Any]) -> Georeferenced:
    """``points`` in the coordinates of the control, whose CRS is ``crs`` (None for a local one).

    Their standard deviations grow with the scale; the uncertainty of the fit itself is in the record.
    """
    fitted = fit.apply(points.easting, points.northing, points.height)
    if fit.space is not None and not np.isfinite(points.height).all():
        # Without a height there is no place in space; plan is that of the mean control height.
        level = np.where(np.isfinite(points.height), points.height, fit.space.origin[2])
        fitted[:, :2] = fit.apply(points.easting, points.northing, level)[:, :2]
    up_scale = fit.scale if fit.space is not None else 1.0
    moved = replace(
        points, easting=fitted[:, 0], northing=fitted[:, 1], height=fitted[:, 2], crs=crs,
        sigma_h=points.sigma_h * fit.scale, sigma_v=points.sigma_v * up_scale,
    )  # fmt: skip
    return Georeferenced(moved, Georeference(Step.CONTROL_FIT, points.crs, crs, fit, fit.statements))


def _check_sigmas(*sigmas: Optional[float]) -> None:
    for value in sigmas:
        if value is not None and not (np.isfinite(value) and value > 0):
            raise SurveyError(BAD_SIGMA, value=value)


def _mask(match: ControlMatch, leave_out: Sequence[str]) -> np.ndarray:
    for name in leave_out:
        if name not in match.names:
            raise SurveyError(NO_SUCH, name=name)
    return np.array([name not in leave_out for name in match.names], bool)


def _names(match: ControlMatch, rows: np.ndarray) -> str:
    return ", ".join(match.names[i] for i in rows)


def _enough(match: ControlMatch, rows: np.ndarray, needed: int, model: Text) -> None:
    if len(rows) < needed:
        text = NO_HEIGHTS if model in (SHIFT, PLANE) else TOO_FEW
        raise SurveyError(text, model=model, needed=needed, count=len(rows), names=_names(match, rows) or "-")


def _reduced(places: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """About their centroid (which is rounded no worse than the coordinates), and the centroid."""
    first = places[0]
    centre = first + (places - first).mean(axis=0)
    return places - centre, centre


def _plan_part(
    match: ControlMatch, rows: np.ndarray, sigma: Optional[float], significance: float
) -> Tuple[PlanSimilarity, Part]:
    _enough(match, rows, 2, FOUR)
    p, origin = _reduced(match.survey[rows, :2])
    q, to = _reduced(match.control[rows, :2])
    design = np.zeros((2 * len(rows), 4))
    design[0::2] = np.column_stack((p[:, 0], -p[:, 1], np.ones(len(p)), np.zeros(len(p))))
    design[1::2] = np.column_stack((p[:, 1], p[:, 0], np.zeros(len(p)), np.ones(len(p))))
    if np.hypot(*p.T).max() < 1e-3 or np.hypot(*q.T).max() < 1e-3:
        raise SurveyError(UNDETERMINED, model=FOUR, names=_names(match, rows))
    adjustment = adjust(design, q.ravel(), _same(sigma, 2 * len(rows)))
    a, b, east, north = (float(value) for value in adjustment.unknowns)
    test = snoop_points(adjustment, np.repeat(np.arange(len(rows)), 2), significance)
    return PlanSimilarity(a, b, origin, to + np.array([east, north])), Part(PART_PLAN, adjustment, test, rows)


def _same(sigma: Optional[float], count: int) -> Optional[np.ndarray]:
    return None if sigma is None else np.full(count, float(sigma))


def _height_part(
    match: ControlMatch, fitted: np.ndarray, used: np.ndarray, heights: HeightFit, sigma: Optional[float],
    significance: float,
) -> Tuple[HeightPlane, Part]:  # fmt: skip
    rows = np.flatnonzero(used & np.isfinite(match.survey[:, 2]) & np.isfinite(match.control[:, 2]))
    model = SHIFT if heights is HeightFit.SHIFT else PLANE
    _enough(match, rows, 1 if heights is HeightFit.SHIFT else 3, model)
    p, origin = _reduced(fitted[rows])
    design = np.ones((len(rows), 1)) if heights is HeightFit.SHIFT else np.column_stack((np.ones(len(p)), p))
    if heights is HeightFit.PLANE and _on_a_line(p):
        raise SurveyError(UNDETERMINED, model=model, names=_names(match, rows))
    adjustment = adjust(design, match.control[rows, 2] - match.survey[rows, 2], _same(sigma, len(rows)))
    shift, east, north = (float(value) for value in np.append(adjustment.unknowns, [0.0, 0.0])[:3])
    test = snoop_points(adjustment, np.arange(len(rows)), significance)
    return HeightPlane(shift, east, north, origin), Part(PART_HEIGHT, adjustment, test, rows)


def _on_a_line(reduced: np.ndarray) -> bool:
    """Whether points (n, 2) or (n, 3) about their centroid lie on one line, or nearly so (1 in 10,000)."""
    sizes = np.linalg.svd(reduced, compute_uv=False)
    return len(sizes) < 2 or bool(sizes[1] <= 1e-4 * sizes[0])


def _iterate(
    survey: np.ndarray, control: np.ndarray, sigma: Optional[np.ndarray]
) -> Tuple[SpaceSimilarity, Adjustment]:
    """Gauss-Newton from the closed solution for equal weights (singular value decomposition; S. Umeyama 1991)."""
    p, origin = _reduced(survey)
    q, centre = _reduced(control)
    if _on_a_line(p) or _on_a_line(q):
        raise np.linalg.LinAlgError("on one line")
    left, sizes, right = np.linalg.svd(q.T @ p)
    mirror = np.diag([1.0, 1.0, np.sign(np.linalg.det(left @ right))])
    rotation = left @ mirror @ right
    scale = float((sizes * np.diag(mirror)).sum() / (p**2).sum())
    moved = np.zeros(3)
    length = float(np.sqrt((p**2).sum(axis=1).mean())) * scale
    for _ in range(100):
        turned = scale * p @ rotation.T
        adjustment = adjust(_space_design(turned, length), (q - turned - moved).ravel(), sigma)
        step = adjustment.unknowns
        moved = moved + step[:3]
        rotation = Rotation.from_rotvec(step[3:6] / length).as_matrix() @ rotation
        scale *= 1.0 + float(step[6]) / length
        if np.abs(step).max() < 1e-13 * max(length, 1.0):
            break
    return SpaceSimilarity(scale, rotation, origin, centre + moved), adjustment


def _space_design(turned: np.ndarray, length: float) -> np.ndarray:
    """Derivatives (3 n, 7) by shifts, turns about three axes and relative scale, the last four times ``length``."""
    design = np.zeros((len(turned), 3, 7))
    design[:, :, :3] = np.eye(3)
    x, y, z = (turned / length).T
    design[:, 1, 3], design[:, 2, 3] = -z, y
    design[:, 0, 4], design[:, 2, 4] = z, -x
    design[:, 0, 5], design[:, 1, 5] = -y, x
    design[:, :, 6] = turned / length
    return design.reshape(-1, 7)


def _finished(
    match: ControlMatch, used: np.ndarray, plan: Optional[PlanSimilarity], plane: Optional[HeightPlane],
    space: Optional[SpaceSimilarity], parts: List[Part], said: List[Message],
) -> ControlFit:  # fmt: skip
    empty = np.full((len(match.names), 3), np.nan)
    redundancy, normalised = empty.copy(), empty.copy()
    columns: Dict[Text, Any] = {PART_PLAN: [0, 1], PART_HEIGHT: [2], PART_SPACE: [0, 1, 2]}
    parted = empty.copy()
    for part in parts:
        where = np.ix_(part.points, columns[part.name])
        parted[where] = part.adjustment.residuals.reshape(len(part.points), -1)
        redundancy[where] = part.adjustment.redundancy.reshape(len(part.points), -1)
        normalised[where] = part.adjustment.normalised.reshape(len(part.points), -1)
    fit = ControlFit(match.names, used, empty, redundancy, normalised, plan, plane, space, tuple(parts), ())
    # Those of the adjustment have more digits than the difference of two national coordinates.
    residuals = np.where(np.isnan(parted), fit.apply(*match.survey.T) - match.control, parted)
    if plan is not None and plane is None:
        residuals[:, 2] = np.nan
    for part in parts:
        said += verdict_said(part, match, residuals[:, columns[part.name]])
    return replace(fit, residuals=residuals, statements=match.messages + tuple(said))
