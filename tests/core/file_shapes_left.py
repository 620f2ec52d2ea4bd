"""Survey files of kinds that testers found last: heights that a title says to count down, notes with commas in them,
numbers glued or parted by blanks, longitudes to 360 and to the west, degrees in a run of digits, another sign between
columns from a line on, an index beside names, X and Y in a CRS whose axes are X and Y.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Iterator, List, Sequence

import numpy as np
from pyproj import Transformer

from tests.core.file_shapes import N, Shape, Truth, by_line, columns_of, decimals, hash_of, lines_of, site
from tests.core.file_shapes_asked import HEAD, cells
from tests.core.file_shapes_found import HALF, USUAL, degrees_of, made

_PLACES = "name=1,easting=2,northing=3,height=4"


def site_in(epsg: int, lon: float, lat: float, seed: int = 3) -> Truth:
    """The walk at another place, in degrees and in the CRS of this code."""
    walk = site(seed)
    to_plan = Transformer.from_crs(4326, epsg, always_xy=True)
    east, north = to_plan.transform(lon, lat)
    east, north = np.round(walk.east - walk.east[0] + east, 3), np.round(walk.north - walk.north[0] + north, 3)
    lons, lats = to_plan.transform(east, north, direction="INVERSE")
    return replace(walk, east=east, north=north, longitude=lons, latitude=lats)


def titles_of_depths() -> Iterator[Shape]:
    """Lines of words by which heights count down, above the points and below them, and some that say no such thing."""
    for line in (
        "Z axis: down", "Z positive down", "depths", "# depths in metres", "Höhen nach unten positiv", "Tiefen",
        "# vertical axis: positive down", "Z-Achse nach unten", "Z vers le bas", "eje Z hacia abajo",
        "Sign convention: down is positive", "asse Z verso il basso", "Z-as naar beneden", "osa Z dolů", "oś Z w dół",
        "Profundidades", "profondeurs en m", "Dybder", "Diepten", "Soundings of the harbour",
    ):  # fmt: skip
        for meant in (True, False):
            truth = site(hash_of(line), height=-12.0)
            height = [word.lstrip("-") for word in decimals(truth.height)]
            truth = truth if meant else replace(truth, height=-truth.height)
            said = {"--heights-of": "depth" if meant else "ground"}
            text = lines_of(cells(truth, height), ",", HEAD)
            yield made(f"down {line} {meant}", f"{line}\n{text}", truth, 3, meant=said)
            if meant:
                yield made(f"down below {line}", f"{text}{line}\n", truth, 2, meant=said)
    for line in (
        "Z axis: up",
        "Heights, not depths",
        "# bit depth: 16",
        "Downs Farm, Down Street",
        "Z nach oben positiv",
    ):
        truth = site(hash_of(line))
        yield made(f"up {line}", f"{line}\n" + lines_of(cells(truth), ",", HEAD), truth, 3)
    truth = site(8)
    text = "Depths and heights\n" + lines_of([*cells(truth), ["1.20"] * N], ",", [*HEAD, "Depth"])
    yield made("up beside a column of depths", text, truth, 3)


def notes_with_commas() -> Iterator[Shape]:
    """Notes in the last column that have the sign between columns in them, without quotes."""
    for sign, often in ((",", 1), (",", 3), (";", 1), (";", 4), ("|", 2)):
        truth = site(hash_of(f"{sign}{often}"))
        notes = [f"kerb{sign} low" if i % often == 0 else f"edge{sign} left{sign} wet" for i in range(N)]
        notes = ["wall" if often > 1 and i % often == 1 else note for i, note in enumerate(notes)]
        text = lines_of([*cells(truth), notes], sign, [*HEAD, "Note"])
        yield made(f"note {sign} {often}", text, truth, 2, codes=by_line(notes, 2))


def glued_numbers() -> Iterator[Shape]:
    """Fixed width without a blank between numbers."""
    for wide, code, headed in ((6, False, False), (4, False, False), (6, True, False), (5, False, True)):
        truth = site(hash_of(f"glued{wide}{code}"))
        columns = cells(truth)
        words = [word.replace(" ", "") for word in truth.codes] if code else [""] * N
        lines = [f"{n:>{wide}}{e}{no}{h:>6} {c}".rstrip() for n, e, no, h, c in zip(*columns, words)]
        head = [f"{'Pt':>{wide}}{'E':>10}{'N':>11}{'Z':>6}"] if headed else []
        ends = [wide, wide + 10, wide + 21]
        spans = [f"{a + 1}-{b}" for a, b in zip([0, *ends], ends)] + [f"{ends[-1] + 1}-{ends[-1] + 6 if code else ''}"]
        roles = ("name", "easting", "northing", "height")
        meant = ",".join(f"{role}={span}" for role, span in zip(roles, spans))
        first = 1 + headed
        yield made(
            f"glued {wide} {code} {headed}", "\n".join([*head, *lines]) + "\n", truth, first,
            names=by_line(truth.names, first), meant={"--columns": meant},
        )  # fmt: skip


def thousands_by_blanks() -> Iterator[Shape]:
    """Blanks between groups of three digits and between columns."""
    for head, gap, mark, named in (
        (True, " ", ".", "1"), (False, " ", ".", "1"), (True, "  ", ".", "1"), (False, "  ", ",", "1"),
        (True, " ", ",", "1"), (False, " ", ".", "5"), (True, " ", ".", "5"), (True, " ", ".", "P"),
    ):  # fmt: skip
        truth = site(hash_of(f"{head}{gap}{mark}{named}"))
        names = {"1": truth.names, "5": [str(501 + i) for i in range(N)], "P": [f"P{i}" for i in range(N)]}[named]
        plan = [[_grouped(word).replace(".", mark) for word in decimals(v)] for v in (truth.east, truth.north)]
        height = [word.replace(".", mark) for word in decimals(truth.height)]
        first = 1 + head
        text = lines_of([names, *plan, height], gap, HEAD if head else None)
        yield made(
            f"thousands {head} {gap!r} {mark} {named}", text, truth, first, names=by_line(names, first),
            meant={"--columns": _PLACES},
        )  # fmt: skip


def _grouped(word: str) -> str:
    whole, _, rest = word.partition(".")
    return f"{int(whole):,}".replace(",", " ") + f".{rest}"


def _angles(values: np.ndarray) -> List[str]:
    return [f"{value:.9f}" for value in values]


def _in_degrees(truth: Truth, lat: Sequence[str], lon: Sequence[str], head: Sequence[str]) -> str:
    return lines_of([truth.names, lat, lon, decimals(truth.height)], ",", head or None)


def to_the_west() -> Iterator[Shape]:
    """Longitudes from 0 to 360, and without a sign in the west."""
    words = ["Pt", "Latitude", "Longitude", "H"]
    truth = site_in(32629, -9.3, 38.7)
    lat, lon = _angles(truth.latitude), _angles(-truth.longitude)
    around = _angles(truth.longitude % 360.0)
    for epsg, head in ((32629, words), (None, words), (32629, ["Pt", "lat", "lon", "h"]), (32629, [])):
        first = 1 + bool(head)
        yield Shape(
            f"around {epsg} {head}", _in_degrees(truth, lat, around, head).encode(), degrees_of(truth, first),
            geographic=True, crs=epsg, precision=2e-8,
            meant={"--columns": "name=1,latitude=2,longitude=3,height=4"},
        )  # fmt: skip
    for epsg, head, title in (
        (32629, words, ""), (3763, words, ""), (None, words, "longitudes west\n"), (None, words, "# Longitude: west\n"),
        (32629, ["Pt", "Latitude (N)", "Longitude (W)", "H"], ""), (None, words, "Längen westlich\n"),
    ):  # fmt: skip
        truth_at = degrees_of(truth, 2 + bool(title))
        text = f"{title}{_in_degrees(truth, lat, lon, head)}"
        yield Shape(
            f"west {epsg} {head[2]} {title}", text.encode(), truth_at, geographic=True, crs=epsg, precision=2e-8,
            meant={"--angles": "west"},
        )  # fmt: skip
    east = {line: (-point[0], *point[1:]) for line, point in degrees_of(truth, 2).items()}
    yield Shape(
        "east against the area", _in_degrees(truth, lat, lon, words).encode(), east, geographic=True, crs=32629,
        precision=2e-8, meant={"--angles": "degrees"},
    )  # fmt: skip


def runs_of_digits() -> Iterator[Shape]:
    """Degrees, minutes, seconds and decimals of seconds in one run of digits."""
    truth = site(17)
    for places in (3, 4, 5):
        lat, lon = _run(truth.latitude, 2, places), _run(truth.longitude, 3, places)
        short = [word.lstrip("0") for word in lon]
        form = {"--angles": "ddmmss" + "s" * places, "--columns": "name=1,latitude=2,longitude=3,height=4"}
        for label, epsg, east, head in (
            ("words", 25832, lon, ["Pt", "Latitude", "Longitude", "H"]), ("none", 25832, lon, []),
            ("no CRS", None, lon, ["Pt", "Latitude", "Longitude", "H"]), ("nothing", None, lon, []),
            ("dms", 25832, lon, ["Pt", f"Lat (DDMMSS{'s' * places})", f"Lon (DDDMMSS{'s' * places})", "H"]),
            ("short", 25832, short, ["Pt", "Lat", "Lon", "H"]),
        ):  # fmt: skip
            yield Shape(
                f"run {places} {label}", _in_degrees(truth, lat, east, head).encode(),
                degrees_of(truth, 1 + bool(head)), geographic=True, crs=epsg, precision=2e-6, meant=form,
            )  # fmt: skip


def _run(values: np.ndarray, digits: int, places: int) -> List[str]:
    found = []
    for value in values.tolist():
        seconds = round(value * 3600 * 10**places)
        minutes, rest = divmod(seconds, 60 * 10**places)
        found.append(f"{minutes // 60:0{digits}d}{minutes % 60:02d}{rest:0{2 + places}d}")
    return found


def another_sign() -> Iterator[Shape]:
    """Another sign between columns from a line on, with and without a header, and with the mark that goes with it."""
    truth = site(29)
    columns = list(columns_of(truth).values())
    for first, second, comma, headed in (
        (",", ";", False, True), (",", ";", True, True), (";", ",", False, True), (",", "\t", False, False),
        ("\t", ";", True, False), (";", "\t", False, True), (",", "|", False, False), (",", ";", False, False),
    ):  # fmt: skip
        text = lines_of([column[:HALF] for column in columns], first, USUAL if headed else None)
        later = [
            [w.replace(".", ",") if comma and i in (1, 2, 3) else w for w in c[HALF:]] for i, c in enumerate(columns)
        ]
        text += lines_of(later, second)
        line = 1 + headed
        yield made(
            f"sign {first!r} {second!r} {comma} {headed}", text, truth, line, codes=by_line(truth.codes, line),
            names=by_line(truth.names, line),
        )  # fmt: skip
    thirds = [lines_of([column[i::3] for column in columns], sign) for i, sign in enumerate(",;\t")]
    order = [*range(0, N, 3), *range(1, N, 3), *range(2, N, 3)]
    rows = {1 + k: (truth.east[i], truth.north[i], truth.height[i]) for k, i in enumerate(order)}
    yield Shape("sign three", "".join(thirds).encode(), rows)


def index_beside_names() -> Iterator[Shape]:
    """Names before or behind an index, without a header."""
    truth = site(31)
    columns = list(columns_of(truth).values())[1:]
    index, names = [str(i + 1) for i in range(N)], [f"KP{i:03d}" for i in range(N)]
    for label, pair in (("behind", [names, index]), ("before", [index, names])):
        for sign in (",", ";", "\t"):
            text = lines_of([*pair, *columns], sign)
            codes, said = by_line(truth.codes, 1), by_line(names, 1)
            yield made(f"index {label} {sign!r}", text, truth, 1, names=said, codes=codes)


def axes_known() -> Iterator[Shape]:
    """X and Y where the CRS has its axes so; a column X may hold the northing all the same, so it is asked."""
    for epsg, lon, lat in ((31370, 4.4, 50.85), (28992, 5.4, 52.1), (3763, -8.0, 39.5), (3035, 9.0, 50.0)):
        truth = site_in(epsg, lon, lat)
        plan = {"X": decimals(truth.east), "Y": decimals(truth.north)}
        for order in ("XY", "YX"):
            text = lines_of(
                [truth.names, *(plan[axis] for axis in order), decimals(truth.height)], ",", ["Pt", *order, "Z"]
            )
            yield made(f"axes {epsg} {order}", text, truth, 2, crs=epsg)


def every_left() -> List[Shape]:
    """All families."""
    families = (
        titles_of_depths, notes_with_commas, glued_numbers, thousands_by_blanks, to_the_west, runs_of_digits,
        another_sign, index_beside_names, axes_known,
    )  # fmt: skip
    return [shape for family in families for shape in family()]


def must_ask(label: str) -> bool:
    """Whether only the user can say how a shape of this label is meant."""
    return label.startswith(("down ", "glued 6", "glued 4", "glued 5", "east against"))
