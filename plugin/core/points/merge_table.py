"""What merging several files found, as CSV tables."""

from __future__ import annotations

from typing import Any, Iterable, Iterator, List, Sequence

from ..files import PathLike, TableWriter, replace_file
from ..site_columns import rows_in_site_units
from .merge import Merged
from .pointset import SOURCE


def clash_rows(merged: Merged) -> Iterator[List[Any]]:
    """Name, file and line of each point whose name occurs in more than one file."""
    points = merged.points
    for clash in merged.clashes:
        for row in clash.points.tolist():
            yield [clash.name, points.extra[SOURCE][row], int(points.source_line[row])]


def difference_rows(merged: Merged) -> Iterator[List[Any]]:
    """File, line and name of both points, distance in plan and height difference (second minus first), metres."""
    points, found = merged.points, merged.height_differences
    columns = (found.first, found.second, found.distance, found.rise)
    for first, second, distance, rise in zip(*(column.tolist() for column in columns)):
        row: List[Any] = []
        for k in (first, second):
            row += [points.extra[SOURCE][k], int(points.source_line[k]), points.name[k]]
        yield [*row, round(distance, 4), round(rise, 4)]


CLASH_COLUMNS = ("name", "source", "line")
DIFFERENCE_COLUMNS = (
    "first_source", "first_line", "first_name", "second_source", "second_line", "second_name", "distance_m", "rise_m",
)  # fmt: skip


def write_clashes(merged: Merged, path: PathLike) -> None:
    """Write :func:`clash_rows`. Raises SurveyError when it cannot be written."""
    _write(path, [CLASH_COLUMNS, *clash_rows(merged)])


def write_differences(merged: Merged, path: PathLike) -> None:
    """Write :func:`difference_rows`. Raises SurveyError when it cannot be written."""
    _write(path, rows_in_site_units(DIFFERENCE_COLUMNS, difference_rows(merged), merged.points.crs))


def _write(path: PathLike, rows: Iterable[Sequence[Any]]) -> None:
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        writer.writerows(rows)
