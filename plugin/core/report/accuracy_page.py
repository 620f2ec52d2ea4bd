"""The accuracy statement for people: a section of the report, and a page of its own."""

from __future__ import annotations

import math
from pathlib import PurePath
from typing import Any, Callable, List, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.patheffects import withStroke

from ..files import PathLike, replace_file
from ..georeference.crs import height_unit, plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..quality.accuracy import AccuracyStatement
from ..quality.check_points import Cover
from ..quality.statistics import HeightStatistics
from ..surface.tin import Tin
from ..units import site_units
from . import markup
from .drawing import (
    INK,
    ORANGE,
    PURPLE,
    STYLE,
    Picture,
    draw_edges,
    draw_relief,
    finish_map,
    map_axes,
    png,
)
from .labels import NOT_KNOWN, Words, number
from .remarks import say_message
from .room import Room

TITLE = QT_TRANSLATE_NOOP("core", "Accuracy statement: {file}")
CAUTION = QT_TRANSLATE_NOOP(
    "core",
    "This is a computation, not a certificate: a licensed professional decides what may be stated for a contract.",
)
GROUPS = {
    Cover.NON_VEGETATED: QT_TRANSLATE_NOOP("core", "non-vegetated"),
    Cover.VEGETATED: QT_TRANSLATE_NOOP("core", "vegetated"),
}
_TEXT = 7.0  # points
_NAMED = 60  # points on the map with their difference in figures


def write_accuracy(
    statement: AccuracyStatement, tin: Tin, path: PathLike, translate: Callable[[str], str] = str, language: str = "en"
) -> None:
    """Write ``statement`` on ``tin`` as an HTML page that needs no other file.

    The same results give the same file. Raises SurveyError when it cannot be written.
    """
    words = Words(translate, site_units(tin.crs))
    file = PurePath(statement.comparison.checks.source).name
    title = words(TITLE, file=file)
    text = markup.page(title, language, markup.caution([words(CAUTION)]), accuracy_body(statement, tin, words))
    with replace_file(path) as name, open(name, "w", encoding="utf-8", newline="\n") as stream:
        stream.write(text)


def accuracy_body(statement: AccuracyStatement, tin: Tin, words: Words) -> str:
    """The statement as HTML: sentences, remarks, statistics, map and every check point."""
    html = markup.bullets(say_message(said, words) for said in statement.statements)
    if statement.remarks:
        html += markup.paragraph(words(QT_TRANSLATE_NOOP("core", "To be known with it:")))
        html += markup.bullets(say_message(said, words) for said in statement.remarks)
    html += _statistics_table(statement, words) + _facts(statement, words)
    picture = accuracy_map(statement, tin, words)
    alt = QT_TRANSLATE_NOOP("core", "Map of {count} check points over the shaded surface with their differences.")
    caption = QT_TRANSLATE_NOOP(
        "core", "Height of the surface less that of the check point, in {unit}; those outside have no figure."
    )
    count = number(len(statement.comparison.checks))
    return (
        html
        + markup.figure(picture.uri, words(alt, count=count), words(caption, unit=words.small.symbol))
        + _points_table(statement, tin, words)
    )


def _statistics_table(statement: AccuracyStatement, words: Words) -> str:
    """Differences by group."""
    columns = [
        (words(GROUPS[Cover.NON_VEGETATED]), statement.non_vegetated),
        (words(GROUPS[Cover.VEGETATED]), statement.vegetated),
        (words(QT_TRANSLATE_NOOP("core", "all")), statement.together),
    ]
    known = [(name, found) for name, found in columns if found is not None]
    if len(known) == 2:  # one group is all
        known = known[:1]
    rows = [
        (words(name), *(value(found, lambda metres: words.small.figure(metres, 1)) for _, found in known))
        for name, value in _QUANTITIES
    ]
    head = [words(QT_TRANSLATE_NOOP("core", "Surface less check point")), *(name for name, _ in known)]
    caption = words(QT_TRANSLATE_NOOP("core", "Differences of height ({unit})"), unit=words.small.symbol)
    return markup.table(caption, head, rows, "h" + "n" * len(known))


_QUANTITIES: List[Tuple[str, Callable[[HeightStatistics, Callable[[float], str]], str]]] = [
    (QT_TRANSLATE_NOOP("core", "check points"), lambda s, told: number(s.count)),
    (QT_TRANSLATE_NOOP("core", "mean (bias)"), lambda s, told: told(s.mean)),
    (QT_TRANSLATE_NOOP("core", "standard deviation"), lambda s, told: told(s.deviation)),
    (QT_TRANSLATE_NOOP("core", "RMSE"), lambda s, told: told(s.rmse)),
    (
        QT_TRANSLATE_NOOP("core", "true RMSE, 95 % confidence"),
        lambda s, told: f"{told(s.rmse_interval[0])} {NOT_KNOWN} {told(s.rmse_interval[1])}",
    ),
    (QT_TRANSLATE_NOOP("core", "1.9600 × RMSE (NSSDA, 95 %)"), lambda s, told: told(s.accuracy_95)),
    (QT_TRANSLATE_NOOP("core", "95th percentile of the absolute values"), lambda s, told: told(s.percentile_95)),
    (QT_TRANSLATE_NOOP("core", "median"), lambda s, told: told(s.median)),
    (QT_TRANSLATE_NOOP("core", "normalised median absolute deviation"), lambda s, told: told(s.nmad)),
    (QT_TRANSLATE_NOOP("core", "smallest and largest"), lambda s, told: f"{told(s.smallest)}, {told(s.largest)}"),
]


def _facts(statement: AccuracyStatement, words: Words) -> str:
    rows = []
    if math.isfinite(statement.check_error):
        name = QT_TRANSLATE_NOOP("core", "check points' own error ({unit})")
        rows.append((name, words.small.figure(statement.check_error, 1)))
    if math.isfinite(statement.rmse_v):
        name = QT_TRANSLATE_NOOP("core", "RMSEV with that error in quadrature ({unit})")
        rows.append((name, words.small.figure(statement.rmse_v, 1)))
    if statement.class_cm is not None:
        rows.append((QT_TRANSLATE_NOOP("core", "finest class met (cm)"), number(statement.class_cm)))
    spread = statement.distribution
    shares = ", ".join(number(100 * share) for share in spread.quadrants)
    rows.append((QT_TRANSLATE_NOOP("core", "share in the SW, SE, NW and NE quarter (%)"), shares))
    return markup.facts(
        words(QT_TRANSLATE_NOOP("core", "What the class rests on")),
        [(words(name, unit=words.small.symbol), value) for name, value in rows],
    )


def _points_table(statement: AccuracyStatement, tin: Tin, words: Words) -> str:
    found = statement.comparison
    checks = found.checks
    unit, plan = height_unit(tin.crs), plan_unit(tin.crs)
    order = np.argsort(-np.nan_to_num(np.abs(found.difference), nan=-1.0), kind="stable")
    rows = [
        (
            str(checks.name[i]) or str(checks.line[i]),
            number(checks.easting[i] / plan.metres, 3),
            number(checks.northing[i] / plan.metres, 3),
            number(checks.height[i] / unit.metres, 3),
            number(found.surface_height[i] / unit.metres, 3),
            words.small.figure(found.difference[i], 1),
            words.small.figure(checks.sigma_v[i], 1),
            words(GROUPS[Cover(int(checks.cover[i]))]),
        )
        for i in order.tolist()
    ]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Check point")),
        words(QT_TRANSLATE_NOOP("core", "Easting ({unit})"), unit=plan.symbol),
        words(QT_TRANSLATE_NOOP("core", "Northing ({unit})"), unit=plan.symbol),
        words(QT_TRANSLATE_NOOP("core", "Height ({unit})"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Surface ({unit})"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Surface less check ({unit})"), unit=words.small.symbol),
        words(QT_TRANSLATE_NOOP("core", "Its own sigma ({unit})"), unit=words.small.symbol),
        words(QT_TRANSLATE_NOOP("core", "Cover")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Every check point, largest differences first")
    return markup.table(words(caption), head, rows, "hnnnnnnw")


def accuracy_map(statement: AccuracyStatement, tin: Tin, words: Words) -> Picture:
    """Check points over the shaded surface, above it, below it or outside, with differences in figures; PNG."""
    unit, found = plan_unit(tin.crs), statement.comparison
    place = np.column_stack([found.checks.easting, found.checks.northing]) / unit.metres
    classes = [
        (found.difference >= 0, QT_TRANSLATE_NOOP("core", "surface above the check point"), "^", ORANGE),
        (found.difference < 0, QT_TRANSLATE_NOOP("core", "surface below the check point"), "v", PURPLE),
        (~found.inside, QT_TRANSLATE_NOOP("core", "outside the surface"), "x", INK),
    ]
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        draw_relief(axes, tin, unit)
        draw_edges(axes, tin, unit, words)
        for mask, name, mark, colour in classes:
            if mask.any():
                axes.scatter(*place[mask].T, marker=mark, s=34, c=colour, linewidths=1.2, zorder=4, label=words(name))
        room = Room(axes)
        room.take(place, 4.0)
        largest = np.argsort(-np.nan_to_num(np.abs(found.difference), nan=-1.0), kind="stable")[:_NAMED]
        for i in largest[found.inside[largest]].tolist():
            _write_figure(axes, room, place[i], words.small.figure(found.difference[i]))
        finish_map(axes, unit, words)
        return Picture(png(figure))


def _write_figure(axes: Any, room: Room, xy: np.ndarray, text: str) -> None:
    offset = room.beside(xy, 0.64 * _TEXT * len(text), _TEXT)
    if offset is not None:
        axes.annotate(
            text, xy, xytext=offset, textcoords="offset points", ha="center", va="center", fontsize=_TEXT, color=INK,
            zorder=6, annotation_clip=False, path_effects=[withStroke(linewidth=2.2, foreground="w")],
        )  # fmt: skip
