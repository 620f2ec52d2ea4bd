"""The results in a few lines for a terminal."""

from __future__ import annotations

from pathlib import Path
from typing import List, Sequence

import numpy as np

from ..features.ground_lines import GroundLines, LineStatus
from ..linework.constraints import LineKind
from ..linework.drawn_file import DrawnFile
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import Status
from .first_things import first_things
from .labels import Words
from .results import JobResult

POINTS_LINE = Text(
    "job.points_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Points    {points} from {lines} lines ({rejects} lines rejected); "
        "{used} used, {flagged} flagged, {rejected} rejected",
    ),
)
LEFT_OUT_LINE = Text(
    "job.left_out_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Left out  {count} of the flagged points, in stretches that passes say are off; --keep-flagged puts back",
    ),
)
LINES_LINE = Text(
    "job.lines_line", QT_TRANSLATE_NOOP("core", "Lines     {lines} from field codes, {edges} edges of the surface held")
)
DRAWN_LINE = Text(
    "job.drawn_line",
    QT_TRANSLATE_NOOP(
        "core", "Drawn     {breaklines} breaklines, {boundaries} boundary rings, {voids} voids, from {files}"
    ),
)
FOUND_LINE = Text(
    "job.found_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Found     {used} lines without codes used as breaklines ({length:.0f} m), {proposed} proposed, {rejected} "
        "rejected",
    ),
)
NOTHING_FOUND_LINE = Text(
    "job.nothing_found_line",
    QT_TRANSLATE_NOOP("core", "Found     no line without codes beyond those that were given"),
)
SURFACE_LINE = Text(
    "job.surface_line",
    QT_TRANSLATE_NOOP("core", "Surface   {triangles} triangles, {area:.1f} m², heights {low:.3f} to {high:.3f} {unit}"),
)
CONTOURS_LINE = Text(
    "job.contours_line",
    QT_TRANSLATE_NOOP("core", "Contours  {lines} lines on {levels} levels, every {interval:g} {unit}"),
)
EDITS_LINE = Text("job.edits_line", QT_TRANSLATE_NOOP("core", "Edits     {applied} of {count} applied"))
FINDINGS_LINE = Text(
    "job.findings_line",
    QT_TRANSLATE_NOOP("core", "Findings  {count} places to look at, in the report"),
    one=QT_TRANSLATE_NOOP("core", "Findings  one place to look at, in the report"),
)
CHECKS_LINE = Text(
    "job.checks_line",
    QT_TRANSLATE_NOOP("core", "Checks    {count} findings, in the report"),
    one=QT_TRANSLATE_NOOP("core", "Checks    one finding, in the report"),
)
REPEAT_LINE = Text(
    "job.repeat_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Checks    {count} findings, in the report; heights repeat to {sigma:.1f} mm",
    ),
    one=QT_TRANSLATE_NOOP("core", "Checks    one finding, in the report; heights repeat to {sigma:.1f} mm"),
)
ACCURACY_LINE = Text(
    "job.accuracy_line",
    QT_TRANSLATE_NOOP("core", "Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} check points"),
    one=QT_TRANSLATE_NOOP("core", "Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one check point"),
)
SHOTS_LINE = Text(
    "job.shots_line",
    QT_TRANSLATE_NOOP(
        "core", "Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against {count} own check shots; no test"
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "Accuracy  RMSE {rmse:.3f} m, mean {mean:+.3f} m against one own check shot; no test"
    ),
)
COVERAGE_LINE = Text(
    "job.coverage_line",
    QT_TRANSLATE_NOOP(
        "core", "Coverage  every {along:.2f} m, passes {across:.1f} m apart; {count} places to walk again"
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "Coverage  every {along:.2f} m, passes {across:.1f} m apart; one place to walk again"
    ),
)
SHEET_LINE = Text(
    "job.sheet_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Sheet     contours shifted by at most {shifted:.3f} m, {labels} labels for 1 : {scale:g}, {spots} spots",
    ),
)
THINNED_LINE = Text(
    "job.thinned_line",
    QT_TRANSLATE_NOOP("core", "Thinned   {kept} of {vertices} vertices, at most {off:.3f} m off in height"),
)
WHERE_LINE = Text("job.where_line", QT_TRANSLATE_NOOP("core", "Site      {place}"))
PLACED_LINE = Text("job.placed_line", QT_TRANSLATE_NOOP("core", "Place     {statement}"))
NOTICED_LINE = Text(
    "job.noticed_line",
    QT_TRANSLATE_NOOP("core", "Remarks   {count}, the worst first"),
    one=QT_TRANSLATE_NOOP("core", "Remarks   one"),
)
WRITTEN_LINE = Text("job.written_line", QT_TRANSLATE_NOOP("core", "Written to {folder}:"))


def summary(result: JobResult, folder: Path) -> List[str]:
    """The lines that tell ``result`` in short, the files last."""
    points, tin, contours, account = result.points, result.surface.tin, result.contours, result.account
    unit = result.shown_height_unit
    count = {status: int(np.count_nonzero(points.status == status)) for status in Status}
    low, high = (height / unit.metres for height in tin.height_range)
    told = [
        message(
            POINTS_LINE, points=len(points), lines=account.lines, rejects=account.rejects, used=count[Status.USED],
            flagged=count[Status.FLAGGED], rejected=count[Status.REJECTED],
        ),
        message(SURFACE_LINE, triangles=len(tin.triangles), area=tin.plan_area, low=low, high=high, unit=unit.symbol),
        message(
            CONTOURS_LINE, lines=len(contours), levels=len(set(contours.step.tolist())),
            interval=contours.options.interval, unit=unit.symbol,
        ),
    ]  # fmt: skip
    if result.linework is not None:
        edges = int(sum(result.surface.report.edges.values()))
        told.insert(1, message(LINES_LINE, lines=len(result.linework.constraints), edges=edges))
    if result.drawn:
        told.insert(-2, _told_of_drawn(result.drawn))
    if result.ground_lines is not None:
        told.insert(-2, _told_of_lines(result.ground_lines))
    out = int(np.count_nonzero(points.left_out))
    if out:
        told.insert(1, message(LEFT_OUT_LINE, count=out))
    where = [] if result.where is None else [message(WHERE_LINE, place=result.where.values["place"])]
    told += _told_of_more(result)
    told += [line for answer in result.answers for line in answer.lines]
    told += [message(PLACED_LINE, statement=one) for one in result.statements]
    remarks = (*result.of_run, *result.remarks)
    if remarks:
        told.append(message(NOTICED_LINE, count=len(remarks)))
    units = result.units
    lines = [*(one.say(units=units) for one in where), *first_things(result, Words(str, units)), ""]
    lines += [one.say(units=units) for one in told]
    lines += [f"  {remark.say(units=units)}" for remark in remarks]
    lines.append(str(message(WRITTEN_LINE, folder=folder)))
    return lines + [f"  {path.name:<24}{_size(path.stat().st_size):>9}" for path in result.files]


def _told_of_drawn(drawn: Sequence[DrawnFile]) -> Message:
    """How many lines of each kind were drawn by hand."""
    kinds = [line.kind for one in drawn for line in one.lines.constraints.lines]
    return message(
        DRAWN_LINE, breaklines=kinds.count(LineKind.BREAKLINE), boundaries=kinds.count(LineKind.BOUNDARY),
        voids=kinds.count(LineKind.VOID), files=", ".join(Path(one.file).name for one in drawn),
    )  # fmt: skip


def _told_of_lines(found: GroundLines) -> Message:
    """How many lines that the points show are held to, and how many are not; or that there is none."""
    if not found.lines:
        return message(NOTHING_FOUND_LINE)
    used, proposed, rejected = (found.of_status(status) for status in LineStatus)
    length = sum(line.length for line in used)
    return message(FOUND_LINE, used=len(used), length=length, proposed=len(proposed), rejected=len(rejected))


def _told_of_more(result: JobResult) -> List[Message]:
    """What there is only with some surveys or settings."""
    sheet, thinned, more = result.sheet, result.thinned, []
    if result.edits:
        more.append(message(EDITS_LINE, applied=len(result.edited.applied), count=len(result.edits)))
    if result.check is not None:
        noise, count = result.check.noise, len(result.check.findings)
        if noise is None or not noise.total > 0:
            more.append(message(CHECKS_LINE, count=count))
        else:
            more.append(message(REPEAT_LINE, count=count, sigma=1000 * noise.total))
    accuracy, covered = result.quality.accuracy, result.quality.coverage
    if accuracy is not None:
        text = ACCURACY_LINE if accuracy.comparison.checks.independent else SHOTS_LINE
        tested = accuracy.non_vegetated or accuracy.together
        more.append(message(text, rmse=tested.rmse, mean=tested.mean, count=tested.count))
    count = len(covered.walk_again)
    more.append(message(COVERAGE_LINE, along=covered.along, across=covered.across, count=count))
    if result.findings:
        more.append(message(FINDINGS_LINE, count=len(result.findings)))
    if sheet is not None:
        said = {"labels": len(sheet.labels), "spots": len(sheet.spots), "scale": sheet.options.scale}
        more.append(message(SHEET_LINE, shifted=sheet.shifted, **said))
    if thinned is not None:
        vertices, off = result.surface.report.vertices, thinned.largest_difference
        more.append(message(THINNED_LINE, kept=len(thinned.tin.vertices), vertices=vertices, off=off))
    return more


def _size(count: int) -> str:
    """A file's size in decimal units."""
    size, unit = float(count), "B"
    for larger in ("kB", "MB", "GB"):
        if size < 1000:
            break
        size, unit = size / 1000, larger
    return f"{size:.0f} {unit}" if unit == "B" else f"{size:.1f} {unit}"
