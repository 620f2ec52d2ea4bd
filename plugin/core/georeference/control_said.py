"""What is to be told of a fit to control points: its parameters, and which points do not fit."""

from __future__ import annotations

from typing import Any, Dict, List, Union

import numpy as np
from scipy.spatial.transform import Rotation

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from .adjustment import Adjustment, Verdict
from .control import ControlMatch
from .similarity import HeightFit, HeightPlane, Part, PlanSimilarity, SpaceSimilarity

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
    metric=True,  # a plane rises by millimetres a kilometre
)
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


def verdict_said(part: Part, match: ControlMatch, residuals: np.ndarray) -> List[Message]:
    sizes = np.sqrt((residuals[part.points] ** 2).sum(axis=1))
    worst = int(np.argmax(sizes))
    suspects = [match.names[part.points[i]] for i in part.test.suspects]
    values: Dict[str, Any] = {
        "part": part.name, "largest_mm": Figure(f"{1000 * sizes[worst]:.1f}"), "worst": match.names[part.points[worst]],
        "suspects": ", ".join(suspects),
    }  # fmt: skip
    if part.test.verdict is Verdict.POINT_NAMED:
        values["off_mm"] = Figure(f"{1000 * _distance_off(part, part.test.suspects[0]):.1f}")
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
    return Figure(" / ".join(f"{1000 * value:.1f} mm" for value in values))


def plan_said(plan: PlanSimilarity, part: Part) -> Message:
    adjustment = part.adjustment
    relative = float(np.sqrt(adjustment.cofactors[0, 0])) * adjustment.unit_sigma / plan.scale
    shift = plan.to - plan.origin
    return message(
        PLAN_SAID, count=len(part.points), turn=Figure(f"{plan.turn_degrees:.6f}"), scale=Figure(f"{plan.scale:.9f}"),
        ppm=Figure(f"{1e6 * (plan.scale - 1):.2f}"), turn_sd=_number(3600 * np.degrees(relative)),
        scale_sd=_number(1e6 * relative), shift_e=Figure(f"{shift[0]:.4f}"), shift_n=Figure(f"{shift[1]:.4f}"),
        freedom=adjustment.freedom, sigma=_sigma_text(adjustment),
    )  # fmt: skip


def _number(value: float) -> Union[str, Text]:
    return Figure(f"{value:.2f}") if np.isfinite(value) else UNKNOWN_SIGMA


def height_said(plane: HeightPlane, part: Part, heights: HeightFit) -> Message:
    values = {
        "shift": Figure(f"{plane.shift:.4f}"), "count": len(part.points), "freedom": part.adjustment.freedom,
        "sigma": _sigma_text(part.adjustment),
    }  # fmt: skip
    if heights is HeightFit.SHIFT:
        return message(SHIFT_SAID, **values)
    return message(
        PLANE_SAID, east=Figure(f"{1e6 * plane.east:.1f}"), north=Figure(f"{1e6 * plane.north:.1f}"), **values
    )


def space_said(similarity: SpaceSimilarity, part: Part) -> Message:
    turn = Rotation.from_matrix(similarity.rotation).as_rotvec()
    angle = float(np.linalg.norm(turn))
    axis = turn / angle if angle > 0 else np.array([0.0, 0.0, 1.0])
    return message(
        SPACE_SAID, count=len(part.points), turn=Figure(f"{np.degrees(angle):.6f}"), x=Figure(f"{axis[0]:.4f}"),
        y=Figure(f"{axis[1]:.4f}"),
        z=Figure(f"{axis[2]:.4f}"), scale=Figure(f"{similarity.scale:.9f}"),
        ppm=Figure(f"{1e6 * (similarity.scale - 1):.2f}"),
        freedom=part.adjustment.freedom, sigma=_sigma_text(part.adjustment),
    )  # fmt: skip
