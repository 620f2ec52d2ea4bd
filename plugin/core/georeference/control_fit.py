"""A survey in local or assumed coordinates fitted to control points by least squares.

In plan a four-parameter similarity (two shifts, a turn, a scale), in height a shift or a tilted plane; or one
seven-parameter similarity in space. All of it about the centroids: national coordinates of millions of
metres lose no digits. Residuals are fitted minus control.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import Any, Dict, List, Optional, Sequence, Tuple, Union

import numpy as np
from scipy.spatial.transform import Rotation

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from .adjustment import Adjustment, PointTest, Verdict, adjust, snoop_points
from .control import ControlMatch
from .record import Georeference, Georeferenced, Step

TOO_FEW = Text(
    "control_fit.too_few",
    QT_TRANSLATE_NOOP("core", "{model} needs {needed} control points or more; {count} can be used: {names}."),
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
PLAN_SAID = Text(
    "control_fit.plan_said",
    QT_TRANSLATE_NOOP(
        "core",
        "Plan: four-parameter fit to {count} control points; turned by {turn} degrees (counter-clockwise; standard "
        "deviation {turn_sd} arc seconds), scale {scale} ({ppm} ppm, standard deviation {scale_sd} ppm), then shifted "
        "by {shift_e} m east and {shift_n} m north at the middle of the points. Redundancy {freedom}, standard "
        "deviation of a coordinate {sigma}.",
    ),
)
SHIFT_SAID = Text(
    "control_fit.shift_said",
    QT_TRANSLATE_NOOP(
        "core",
        "Height: shifted by {shift} m, from {count} control points; redundancy {freedom}, standard deviation of a "
        "height {sigma}.",
    ),
)
PLANE_SAID = Text(
    "control_fit.plane_said",
    QT_TRANSLATE_NOOP(
        "core",
        "Height: shifted by {shift} m at the middle of {count} control points, with a plane that rises {east} mm a "
        "kilometre eastward and {north} mm northward; redundancy {freedom}, standard deviation of a height {sigma}.",
    ),
)
HEIGHT_KEPT = Text("control_fit.height_kept", QT_TRANSLATE_NOOP("core", "Heights are taken over as they are."))
SPACE_SAID = Text(
    "control_fit.space_said",
    QT_TRANSLATE_NOOP(
        "core",
        "Seven-parameter fit in space to {count} control points; turned by {turn} degrees about the axis (east {x}, "
        "north {y}, up {z}), scale {scale} ({ppm} ppm). Redundancy {freedom}, standard deviation of a coordinate "
        "{sigma}.",
    ),
)
UNKNOWN_SIGMA = Text("control_fit.unknown_sigma", QT_TRANSLATE_NOOP("core", "unknown"))
VERDICTS = {
    Verdict.NO_REDUNDANCY: Text(
        "control_fit.no_redundancy",
        QT_TRANSLATE_NOOP("core", "{part}: no redundancy; the fit is exact, and an error in a point would not show."),
    ),
    Verdict.TOO_FEW_UNKNOWN: Text(
        "control_fit.too_few_unknown",
        QT_TRANSLATE_NOOP(
            "core",
            "{part}: with these control points it cannot be told which one does not fit; judge the residuals (largest "
            "{largest_mm} mm, at '{worst}'), and use more control points.",
        ),
    ),
    Verdict.TOO_FEW_MISFIT: Text(
        "control_fit.too_few_misfit",
        QT_TRANSLATE_NOOP(
            "core",
            "{part}: the control points do not fit within the standard deviation given, and with so few it cannot be "
            "told which one is wrong; largest residual {largest_mm} mm, at '{worst}'.",
        ),
    ),
    Verdict.TOO_FEW_FIT: Text(
        "control_fit.too_few_fit",
        QT_TRANSLATE_NOOP(
            "core",
            "{part}: the control points fit within the standard deviation given; were one wrong, it could not be told "
            "which.",
        ),
    ),
    Verdict.NONE_STANDS_OUT: Text(
        "control_fit.none_stands_out",
        QT_TRANSLATE_NOOP(
            "core", "{part}: no control point stands out; largest residual {largest_mm} mm, at '{worst}'."
        ),
    ),
    Verdict.POINT_NAMED: Text(
        "control_fit.point_named",
        QT_TRANSLATE_NOOP(
            "core",
            "{part}: control point '{suspects}' does not fit ({off_mm} mm from where the others put it); check it, and "
            "fit again without it.",
        ),
    ),
    Verdict.SEVERAL_POSSIBLE: Text(
        "control_fit.several_possible",
        QT_TRANSLATE_NOOP(
            "core", "{part}: one of these control points does not fit, and it cannot be told which: {suspects}."
        ),
    ),
}
OVERALL = Text(
    "control_fit.overall",
    QT_TRANSLATE_NOOP(
        "core",
        "{part}: together the residuals are larger than the standard deviation given allows; it may be too small, or "
        "several points may be wrong.",
    ),
)
PART_PLAN = Text("control_fit.plan", QT_TRANSLATE_NOOP("core", "Plan"))
PART_HEIGHT = Text("control_fit.height", QT_TRANSLATE_NOOP("core", "Height"))
PART_SPACE = Text("control_fit.space", QT_TRANSLATE_NOOP("core", "Space"))
FOUR = Text("control_fit.four", QT_TRANSLATE_NOOP("core", "A four-parameter fit"))
SEVEN = Text("control_fit.seven", QT_TRANSLATE_NOOP("core", "A seven-parameter fit"))
SHIFT = Text("control_fit.shift", QT_TRANSLATE_NOOP("core", "A shift of heights"))
PLANE = Text("control_fit.plane", QT_TRANSLATE_NOOP("core", "A plane for heights"))


class HeightFit(Enum):
    """What is done to heights in a four-parameter fit."""

    KEEP = "keep"
    SHIFT = "shift"
    PLANE = "plane"


@dataclass(frozen=True)
class PlanSimilarity:
    """``to`` + [[a, -b], [b, a]] (p - ``origin``), metres; centroids of the control in survey and control
    coordinates."""

    a: float
    b: float
    origin: np.ndarray
    to: np.ndarray

    @property
    def scale(self) -> float:
        """Control distance over survey distance."""
        return float(np.hypot(self.a, self.b))

    @property
    def turn_degrees(self) -> float:
        """Turn from survey to control axes, counter-clockwise."""
        return float(np.degrees(np.arctan2(self.b, self.a)))

    @property
    def shift(self) -> np.ndarray:
        """Coordinates (2,) that the survey's own origin gets, metres."""
        x, y = self.origin
        return self.to - np.array([self.a * x - self.b * y, self.b * x + self.a * y])

    def apply(self, places: np.ndarray) -> np.ndarray:
        """Fitted plan coordinates (n, 2), metres."""
        x, y = (np.asarray(places, float) - self.origin).T
        return self.to + np.column_stack((self.a * x - self.b * y, self.b * x + self.a * y))


@dataclass(frozen=True)
class HeightPlane:
    """Added to heights: ``shift`` + ``east`` (E - ``origin`` E) + ``north`` (N - ``origin`` N), metres, at
    fitted plan coordinates."""

    shift: float
    east: float
    north: float
    origin: np.ndarray

    def apply(self, fitted: np.ndarray, height: np.ndarray) -> np.ndarray:
        """Heights (n,) at fitted plan coordinates (n, 2), metres."""
        x, y = (fitted - self.origin).T
        return np.asarray(height, float) + self.shift + self.east * x + self.north * y


@dataclass(frozen=True)
class SpaceSimilarity:
    """``to`` + scale R (p - ``origin``), metres, with the rotation matrix R (3, 3)."""

    scale: float
    rotation: np.ndarray
    origin: np.ndarray
    to: np.ndarray

    def apply(self, places: np.ndarray) -> np.ndarray:
        """Fitted coordinates (n, 3), metres."""
        return self.to + self.scale * (np.asarray(places, float) - self.origin) @ self.rotation.T


@dataclass(frozen=True)
class Part:
    """One adjustment: of plan, height or space. ``points``: row in the fit of each point of ``test``."""

    name: Text
    adjustment: Adjustment
    test: PointTest
    points: np.ndarray


@dataclass(frozen=True)
class ControlFit:
    """A fit to n control points.

    ``used`` (n,): mask. ``residuals`` (n, 3): fitted minus control in easting, northing, height, metres, also of
    points left out; nan where not fitted. ``redundancy`` and ``normalised`` (n, 3): redundancy numbers and
    residuals over their standard deviations, nan where not used. ``plan`` and ``height``, or ``space``: the
    parameters. ``parts``: the adjustments with their tests. ``statements``: for the report.
    """

    names: Tuple[str, ...]
    used: np.ndarray
    residuals: np.ndarray
    redundancy: np.ndarray
    normalised: np.ndarray
    plan: Optional[PlanSimilarity]
    height: Optional[HeightPlane]
    space: Optional[SpaceSimilarity]
    parts: Tuple[Part, ...]
    statements: Tuple[Message, ...]

    @property
    def scale(self) -> float:
        """Control distance over survey distance."""
        return self._similarity.scale

    @property
    def _similarity(self) -> Union[PlanSimilarity, SpaceSimilarity]:
        found = self.plan or self.space
        assert found is not None
        return found

    @property
    def suspects(self) -> Tuple[str, ...]:
        """Names of the points that do not fit, in any part."""
        found = [self.names[part.points[i]] for part in self.parts for i in part.test.suspects]
        return tuple(dict.fromkeys(found))

    def apply(self, easting: Any, northing: Any, height: Any) -> np.ndarray:
        """Fitted easting, northing, height (n, 3), metres."""
        places = np.column_stack((easting, northing, height)).astype(float)
        if self.space is not None:
            return self.space.apply(places)
        assert self.plan is not None
        fitted = self.plan.apply(places[:, :2])
        up = places[:, 2] if self.height is None else self.height.apply(fitted, places[:, 2])
        return np.column_stack((fitted, up))


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
    said = [_plan_said(plan, parts[0])]
    said.append(message(HEIGHT_KEPT) if plane is None else _plane_said(plane, parts[1], heights))
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
    return _finished(match, used, None, None, similarity, [part], [_space_said(similarity, part)])


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
        raise SurveyError(TOO_FEW, model=model, needed=needed, count=len(rows), names=_names(match, rows) or "-")


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
        said += _verdict(part, match, residuals[:, columns[part.name]])
    return replace(fit, residuals=residuals, statements=match.messages + tuple(said))


def _verdict(part: Part, match: ControlMatch, residuals: np.ndarray) -> List[Message]:
    sizes = np.sqrt((residuals[part.points] ** 2).sum(axis=1))
    worst = int(np.argmax(sizes))
    suspects = [match.names[part.points[i]] for i in part.test.suspects]
    values: Dict[str, Any] = {
        "part": part.name, "largest_mm": f"{1000 * sizes[worst]:.1f}", "worst": match.names[part.points[worst]],
        "suspects": ", ".join(suspects),
    }  # fmt: skip
    if part.test.verdict is Verdict.POINT_NAMED:
        values["off_mm"] = f"{1000 * _distance_off(part, part.test.suspects[0]):.1f}"
    said = [message(VERDICTS[part.test.verdict], **values)]
    if part.test.verdict is Verdict.NONE_STANDS_OUT and part.test.overall < part.test.limit * len(part.points):
        said.append(message(OVERALL, part=part.name))
    return said


def _distance_off(part: Part, point: int) -> float:
    """How far a point is from where the fit without it would put it, metres."""
    each = len(part.adjustment.residuals) // len(part.points)
    rows = np.arange(point * each, (point + 1) * each)
    reduced = part.adjustment.residuals[rows] / part.adjustment.sigma[rows]
    full = np.linalg.pinv(part.adjustment.spread[np.ix_(rows, rows)], rcond=1e-9) @ reduced
    return float(np.linalg.norm(full * part.adjustment.sigma[rows]))


def _sigma_text(adjustment: Adjustment) -> Union[str, Text]:
    """A posteriori standard deviation of a coordinate; times the a priori one where that is known."""
    if not adjustment.freedom:
        return UNKNOWN_SIGMA
    values = sorted({float(value) * adjustment.sigma0 for value in adjustment.sigma})
    return " / ".join(f"{1000 * value:.1f} mm" for value in values)


def _plan_said(plan: PlanSimilarity, part: Part) -> Message:
    adjustment = part.adjustment
    relative = float(np.sqrt(adjustment.cofactors[0, 0])) * adjustment.unit_sigma / plan.scale
    shift = plan.to - plan.origin
    return message(
        PLAN_SAID, count=len(part.points), turn=f"{plan.turn_degrees:.6f}", scale=f"{plan.scale:.9f}",
        ppm=f"{1e6 * (plan.scale - 1):.2f}", turn_sd=_number(3600 * np.degrees(relative)),
        scale_sd=_number(1e6 * relative), shift_e=f"{shift[0]:.4f}", shift_n=f"{shift[1]:.4f}",
        freedom=adjustment.freedom, sigma=_sigma_text(adjustment),
    )  # fmt: skip


def _number(value: float) -> Union[str, Text]:
    return f"{value:.2f}" if np.isfinite(value) else UNKNOWN_SIGMA


def _plane_said(plane: HeightPlane, part: Part, heights: HeightFit) -> Message:
    values = {
        "shift": f"{plane.shift:.4f}", "count": len(part.points), "freedom": part.adjustment.freedom,
        "sigma": _sigma_text(part.adjustment),
    }  # fmt: skip
    if heights is HeightFit.SHIFT:
        return message(SHIFT_SAID, **values)
    return message(PLANE_SAID, east=f"{1e6 * plane.east:.1f}", north=f"{1e6 * plane.north:.1f}", **values)


def _space_said(similarity: SpaceSimilarity, part: Part) -> Message:
    turn = Rotation.from_matrix(similarity.rotation).as_rotvec()
    angle = float(np.linalg.norm(turn))
    axis = turn / angle if angle > 0 else np.array([0.0, 0.0, 1.0])
    return message(
        SPACE_SAID, count=len(part.points), turn=f"{np.degrees(angle):.6f}", x=f"{axis[0]:.4f}", y=f"{axis[1]:.4f}",
        z=f"{axis[2]:.4f}", scale=f"{similarity.scale:.9f}", ppm=f"{1e6 * (similarity.scale - 1):.2f}",
        freedom=part.adjustment.freedom, sigma=_sigma_text(part.adjustment),
    )  # fmt: skip
