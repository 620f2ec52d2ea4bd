"""Survey files whose trouble others found: parts under headers of their own, units and markers in odd places, packed
degrees without a word, depths, units glued to numbers, cells glued together, keys in every line, reduced degrees.
"""

from __future__ import annotations

import itertools
from typing import Any, Dict, Iterator, List, Sequence, Tuple

from tests.core.file_shapes import (
    N,
    Shape,
    Truth,
    by_line,
    columns_of,
    decimals,
    hash_of,
    lines_of,
    site,
    truth_of,
)

USUAL = ["Point", "Easting", "Northing", "Height", "Code"]
EVERY = {"--columns": "name=1,easting=2,northing=3,height=4,code=5"}
HALF = N // 2


def made(label: str, text: str, truth: Truth, first: int, encoding: str = "utf-8", **more: Any) -> Shape:
    """A shape with one point a line from ``first`` on."""
    return Shape(label, text.encode(encoding), truth_of(truth, first, more.pop("skip", ())), **more)


def degrees_of(truth: Truth, first: int) -> Dict[int, Tuple[float, float, float]]:
    rows = zip(truth.longitude.tolist(), truth.latitude.tolist(), truth.height.tolist())
    return {first + i: row for i, row in enumerate(rows)}


def sections() -> Iterator[Shape]:
    """A second header within the file, of another order, another unit, another delimiter, or the same again."""
    for delimiter, comment in itertools.product((",", ";", "\t"), ("", "# ")):
        truth = site(hash_of(delimiter + comment))
        columns = columns_of(truth)
        pdop = [f"1.{i % 4}" for i in range(N)]
        one = [columns["name"], columns["easting"], columns["northing"], columns["height"], pdop]
        two = [columns["name"], columns["easting"], columns["northing"], pdop, columns["height"]]
        text = lines_of([part[:HALF] for part in one], delimiter, ["Pt", "E", "N", "H", "PDOP"])
        text += comment + lines_of([part[HALF:] for part in two], delimiter, ["Pt", "E", "N", "PDOP", "H"])
        yield Shape(f"sections order {delimiter!r} {comment}", text.encode(), _parted(truth), names=_names(truth))
    for (plan, rise), again in itertools.product((("m", "ft"), ("ft", "ft"), ("m", "cm")), (False, True)):
        truth = site(hash_of(plan + rise))
        head = ["Pt", "E (m)", "N (m)", "H (m)"]
        words = {"m": "m", "ft": "international feet", "cm": "cm"}
        other = ["Pt", f"E ({words[plan]})", f"N ({words[plan]})", f"H ({words[rise]})"]
        text = lines_of(_cells(truth, "m", "m", slice(0, HALF)), ",", head)
        text += "\n" * again + lines_of(_cells(truth, plan, rise, slice(HALF, N)), ",", other)
        meant = {"--units-from": "header", "--unit": plan, "--height-unit": rise}
        yield Shape(f"sections unit {plan} {rise} {again}", text.encode(), _parted(truth, 2 + again), meant=meant)
    truth = site(77)
    columns = list(columns_of(truth).values())
    text = lines_of([part[:HALF] for part in columns], ",", USUAL)
    text += lines_of([part[HALF:] for part in columns], ",", USUAL)
    yield Shape("sections same", text.encode(), _parted(truth), codes=_codes(truth))
    text = lines_of([part[:HALF] for part in columns], ",", USUAL)
    order = [0, 2, 1, 3, 4]
    text += lines_of([columns[i][HALF:] for i in order], ";", [USUAL[i] for i in order])
    yield Shape("sections delimiter", text.encode(), _parted(truth), codes=_codes(truth))


def _cells(truth: Truth, plan: str, rise: str, part: slice) -> List[Sequence[str]]:
    return [
        truth.names[part],
        decimals(truth.east[part], plan, 4),
        decimals(truth.north[part], plan, 4),
        decimals(truth.height[part], rise, 4),
    ]


def _parted(truth: Truth, gap: int = 2) -> Dict[int, Tuple[float, float, float]]:
    """Lines of two halves, a header above each, and ``gap`` lines before the second."""
    whole = truth_of(truth, 2)
    return {line if line < 2 + HALF else line + gap - 1: point for line, point in whole.items()}


def _names(truth: Truth) -> Dict[int, str]:
    return {line if line < 2 + HALF else line + 1: name for line, name in by_line(truth.names, 2).items()}


def _codes(truth: Truth) -> Dict[int, str]:
    return {line if line < 2 + HALF else line + 1: code for line, code in by_line(truth.codes, 2).items()}


def repeated() -> Iterator[Shape]:
    """Numbers for no value that no program is known for, told by their repetition alone."""
    for word, share, headed in itertools.product(
        ("-1", "-1.000", "-10.000", "100.000", "500", "1234.567", "95.000"), ("four", "tenth", "third"), (True, False)
    ):
        truth = site(hash_of(word + share), height=92.0)
        skip = {"four": [5, 17, 29, 40], "tenth": list(range(3, N, 10)), "third": list(range(1, N, 3))}[share]
        columns = columns_of(truth)
        columns["height"] = [word if i in skip else text for i, text in enumerate(columns["height"])]
        first = 2 if headed else 1
        yield made(
            f"repeated {word} {share} {headed}",
            lines_of(list(columns.values()), ",", USUAL if headed else None),
            truth,
            first,
            skip=skip,
            meant={**EVERY, "--no-value": word},
        )
    for word in ("-1", "500"):
        truth = site(hash_of(word))
        columns = columns_of(truth)
        skip = list(range(20, 31))
        columns["height"] = [word if i in skip else text for i, text in enumerate(columns["height"])]
        text = lines_of(list(columns.values()), ",", USUAL)
        yield made(f"repeated run {word}", text, truth, 2, skip=skip, meant={"--no-value": word})


def odd_units() -> Iterator[Shape]:
    """Units in odd places of the header, in columns of their own, in titles, and glued to words."""
    truth = site(11)
    plan = [truth.names, decimals(truth.east), decimals(truth.north)]
    for said, unit, places in (
        ("H (0.01 m)", "cm", 1),
        ("H [1/100 m]", "cm", 1),
        ("H (0.1 m)", "dm", 2),
        ("H [10 mm]", "cm", 1),
        ("H (1e-3 m)", "mm", 0),
        ("HeightFeet", "ft", 4),
        ("heightft", "ft", 4),
        ("ElevFt", "ft", 4),
        ("ELEV_FT", "ft", 4),
        ("HeightCm", "cm", 1),
        ("Z.ft", "ft", 4),
        ("Height, ft", "ft", 4),
        ("Height/ft", "ft", 4),
        ("Height in feet", "ft", 4),
        ("ft Height", "ft", 4),
        ("Höhe [Fuß]", "ft", 4),
        ("H - cm", "cm", 1),
        ("Height:mm", "mm", 0),
        ("Height (unit: cm)", "cm", 1),
        ("Height in 1/10 m", "dm", 2),
    ):
        head = ["name", "E (m)", "N (m)", f'"{said}"' if "," in said else said]
        yield made(
            f"odd unit {said}",
            lines_of([*plan, decimals(truth.height, unit, places)], ",", head),
            truth,
            2,
            meant={"--height-unit": unit, "--units-from": "header"},
        )
    feet = decimals(truth.height, "ft", 4)
    for head, word in (("Height unit", "ft"), ("Unit", "ft"), ("Einheit Höhe", "Fuß"), ("h_unit", "ift")):
        columns = [*plan, feet, [word] * N]
        said = ["name", "E (m)", "N (m)", "Height", head]
        text = lines_of(columns, ",", said)
        yield made(f"unit column {head}", text, truth, 2, meant={"--height-unit": "ft", "--units-from": "header"})
    columns = [
        truth.names,
        *([v for values in (truth.east, truth.north, truth.height) for v in (decimals(values), ["m"] * N)]),
    ]
    yield made(
        "unit columns between",
        lines_of(columns, ","),
        truth,
        1,
        meant={"--columns": "name=1,easting=2,northing=4,height=6"},
    )
    for line, unit, both in (
        ("Site survey;heights in feet", "ft", False),
        ("Heights: cm", "cm", False),
        ("All lengths in millimetres", "mm", True),
        ("Units: mm", "mm", True),
        ("Survey of Monday (all dimensions in mm)", "mm", True),
        ("Höhen in cm", "cm", False),
        ("Unité : cm", "cm", True),
        ("Elevations are in international feet", "ft", False),
        ("Unit of length = mm", "mm", True),
        ("Coordinates in mm, heights in mm", "mm", True),
        ("Z in cm", "cm", False),
        ("Units,mm", "mm", True),
    ):
        for sign in ("", "# "):
            truth = site(hash_of(line))
            unit_of_plan, places = (unit, {"mm": 0, "cm": 1}.get(unit, 4)) if both else ("m", 3)
            columns = [
                truth.names,
                decimals(truth.east, unit_of_plan, places),
                decimals(truth.north, unit_of_plan, places),
                decimals(truth.height, unit, {"mm": 0, "cm": 1}.get(unit, 4)),
            ]
            text = f"{sign}{line}\n" + lines_of(columns, ",", USUAL[:4])
            yield made(
                f"title {sign}{line}",
                text,
                truth,
                3,
                meant={"--unit": unit_of_plan, "--height-unit": unit, "--units-from": "header"},
            )


def packed() -> Iterator[Shape]:
    """Degrees, minutes and seconds in one under headers that say nothing, all pairs of digits below 60."""
    from pyproj import Transformer

    back = Transformer.from_crs(4258, 25832, always_xy=True)
    for (lon, lat), seed in itertools.product(((9.6944, 51.5556), (9.204, 51.337), (10.51, 52.004)), (1, 2)):
        east, north = back.transform(lon, lat)
        walk = site(seed)
        east, north = walk.east - walk.east[0] + east, walk.north - walk.north[0] + north
        lons, lats = Transformer.from_crs(25832, 4258, always_xy=True).transform(east, north)
        truth = Truth(east, north, walk.height, walk.names, walk.codes, walk.time, lons, lats)
        for write, form in ((_packed, "dd.mmss"), (lambda v: f"{v:.9f}", "degrees")):
            fields = [[write(v) for v in values] for values in (lats, lons)]
            text = lines_of(
                [truth.names, *fields, decimals(truth.height)], ",", ["Name", "Latitude", "Longitude", "Height"]
            )
            yield Shape(
                f"packed {lon} {seed} {form}",
                text.encode(),
                degrees_of(truth, 2),
                geographic=True,
                precision=2e-8,
                meant={"--angles": form},
            )


def _packed(value: float) -> str:
    total = round(abs(value) * 3600, 5)
    d, m, s = int(total // 3600), int(total % 3600 // 60), total % 60
    return f"{d}.{m:02d}{s:08.5f}".replace(".", "#", 1).replace(".", "").replace("#", ".")


def depths() -> Iterator[Shape]:
    """Depths in place of heights, and beside them."""
    for word, meant in itertools.product(
        ("Depth", "Tiefe", "Profondeur", "Profundidad (m)", "Diepte", "Dybde"), (True, False)
    ):
        truth = site(hash_of(word), height=12.0 if not meant else -12.0)
        columns = columns_of(truth)
        if meant:
            columns["height"] = [text.lstrip("-") for text in columns["height"]]
        head = [*USUAL[:3], word, USUAL[4]]
        yield made(
            f"depth {word} {meant}",
            lines_of(list(columns.values()), ",", head),
            truth,
            2,
            meant={"--heights-of": "depth" if meant else "ground"},
        )
    truth = site(5)
    columns = columns_of(truth)
    text = lines_of([*columns.values(), ["1.20"] * N], ",", [*USUAL, "Depth"])
    yield made("depth beside a height", text, truth, 2, codes=by_line(truth.codes, 2))


def glued() -> Iterator[Shape]:
    """Units and codes glued to numbers, keys before values."""
    truth = site(19)
    columns = columns_of(truth)
    for headed, sign, blank in itertools.product((True, False), (",", ";", "\t"), ("", " ")):
        cells = [
            columns["name"],
            *([f"{word}{blank}m" for word in columns[role]] for role in ("easting", "northing", "height")),
        ]
        yield made(
            f"glued m {headed} {sign!r} {blank!r}",
            lines_of(cells, sign, USUAL[:4] if headed else None),
            truth,
            1 + headed,
            meant=EVERY,
        )
    for unit in ("ft", "cm"):
        cells = [
            columns["name"],
            *([f"{word}m" for word in columns[role]] for role in ("easting", "northing")),
            [f"{word}{unit}" for word in decimals(truth.height, unit, 4)],
        ]
        yield made(
            f"glued {unit}",
            lines_of(cells, ",", USUAL[:4]),
            truth,
            2,
            meant={"--units-from": "header", "--height-unit": unit},
        )
    code = [word.replace(" ", "") for word in columns["code"]]
    lines = [f"{n:>6}{e:>12}{no:>13}{h:>8}{c}" for n, e, no, h, c in zip(*list(columns.values())[:4], code)]
    yield made("glued code", "\n".join(lines) + "\n", truth, 1, codes=by_line(code, 1), meant=EVERY)
    head = f"{'Point':>6}{'Easting':>12}{'Northing':>13}{'Height':>8}Code"
    yield made("glued code headed", "\n".join([head, *lines]) + "\n", truth, 2, codes=by_line(code, 2), meant=EVERY)
    for (equal, gap), keys in itertools.product(
        (("=", " "), (":", " "), ("=", ", "), (": ", "; "), ("=", ";")), (("PT", "E", "N", "H", "CODE"), USUAL)
    ):
        rows = zip(*list(columns.values())[:4], code)
        text = "\n".join(gap.join(f"{key}{equal}{word}" for key, word in zip(keys, row)) for row in rows) + "\n"
        yield made(f"keys {equal!r} {gap!r} {keys[0]}", text, truth, 1, codes=by_line(code, 1), meant=EVERY)


def parted_degrees() -> Iterator[Shape]:
    """Degrees in columns of their own, in parts of a degree, and in arc minutes and seconds."""

    def dms(value: float) -> Tuple[int, int, float]:
        total = round(abs(value) * 3600, 6)
        return int(total // 3600), int(total % 3600 // 60), total % 60

    truth = site(23)
    names = ["Lat deg", "Lat min", "Lat sec"], ["Lon deg", "Lon min", "Lon sec"]
    others = ["lat_d", "lat_m", "lat_s"], ["lon_d", "lon_m", "lon_s"]
    brackets = ["Latitude (°)", "Latitude (')", 'Latitude (")'], ["Longitude (°)", "Longitude (')", 'Longitude (")']
    german = ["Breite Grad", "Breite Min", "Breite Sek"], ["Länge Grad", "Länge Min", "Länge Sek"]
    for (lat, lon), sign in itertools.product((names, others, brackets, german), (",", ";", "\t")):
        cells = []
        for values in (truth.latitude, truth.longitude):
            parts = [dms(v) for v in values]
            cells += [[str(p[0]) for p in parts], [str(p[1]) for p in parts], [f"{p[2]:.5f}" for p in parts]]
        text = lines_of([truth.names, *cells, decimals(truth.height)], sign, ["name", *lat, *lon, "height"])
        yield Shape(
            f"parted degrees {lat[1]} {sign!r}", text.encode(), degrees_of(truth, 2), geographic=True, precision=2e-8
        )
    for said, factor, form, places in (
        ("_e9", 1e9, "1e-9", 0),
        ("_e7", 1e7, "1e-7", 0),
        (" (1e-9 deg)", 1e9, "1e-9", 0),
        (" [1e-7°]", 1e7, "1e-7", 0),
        (" (arcsec)", 3600.0, "arcsec", 5),
        (" (arcmin)", 60.0, "arcmin", 7),
        (" (1e7)", 1e7, "1e-7", 0),
        ("_nanodeg", 1e9, "1e-9", 0),
        (" (microdegrees)", 1e6, "1e-6", 2),
    ):
        for words in (("Lat", "Lon"), ("latitude", "longitude")):
            cells = [[f"{v * factor:.{places}f}" for v in values] for values in (truth.latitude, truth.longitude)]
            text = lines_of(
                [truth.names, *cells, decimals(truth.height)], ",", ["name", *(w + said for w in words), "height"]
            )
            yield Shape(
                f"parts of a degree {words[0]}{said}",
                text.encode(),
                degrees_of(truth, 2),
                geographic=True,
                precision=6e-8,
                meant={"--angles": form},
            )


def kept_beside() -> Iterator[Shape]:
    """Names and codes that went astray."""
    truth = site(31)
    columns = columns_of(truth)
    cells = list(columns.values())
    every = {"names": by_line(truth.names, 2), "codes": by_line(truth.codes, 2)}
    for encoding, head in (
        ("cp1250", ["Číslo bodu", "Východ", "Sever", "Výška", "Kód"]),
        ("cp1250", ["Nr punktu", "Wschód", "Północ", "Wysokość", "Kod"]),
        ("cp1251", ["Имя точки", "Восток", "Север", "Высота", "Код"]),
        ("cp1253", ["Σημείο", "Ανατολή", "Βορράς", "Υψόμετρο", "Κωδικός"]),
        ("cp1254", ["Nokta", "Doğu", "Kuzey", "Yükseklik", "Açıklama"]),
        ("iso8859-2", ["Číslo bodu", "Východ", "Sever", "Výška", "Kód"]),
        ("koi8-r", ["Имя точки", "Восток", "Север", "Высота", "Код"]),
        ("cp852", ["Číslo bodu", "Východ", "Sever", "Výška", "Kód"]),
        ("cp437", ["Punkt", "Rechtswert", "Hochwert", "Höhe", "Bemerkung"]),
        ("cp866", ["Имя точки", "Восток", "Север", "Высота", "Код"]),
        ("mac-roman", ["Punkt", "Rechtswert", "Hochwert", "Höhe", "Bemerkung"]),
        ("utf-8", ["Punkt", "Øst", "Nord", "Høyde", "Temakode"]),
    ):
        yield made(
            f"beside {encoding} {head[4]}",
            lines_of(cells, ";", head),
            truth,
            2,
            encoding,
            **every,
            meant={"--columns": EVERY["--columns"], "--encoding": encoding},
        )
    numbers = [str(100 + 10 * (i // 6 % 5)) for i in range(N)]
    text = lines_of([*cells[:4], numbers], ",")
    yield made(
        "beside numeric codes", text, truth, 1, codes=by_line(numbers, 1), names=by_line(truth.names, 1), meant=EVERY
    )
    moments = [str(1744182362000 + 1000 * i) for i in range(N)]
    for place, unit in itertools.product((0, 4), (1, 1000)):
        stamps = [str(int(m) // (1000 // unit)) for m in moments]
        parts = [cells[0], *cells[1:4], cells[4]]
        parts.insert(place, stamps)
        order = ["name", "easting", "northing", "height", "code"]
        order.insert(place, "time")
        meant = ",".join(f"{role}={i + 1}" for i, role in enumerate(order))
        yield made(
            f"beside epoch {place} {unit}",
            lines_of(parts, ","),
            truth,
            1,
            names=by_line(truth.names, 1),
            time=by_line(truth.time.tolist(), 1),
            meant={"--columns": meant},
        )
    names = [f"#{name}" if i % 10 == 3 else name for i, name in enumerate(truth.names)]
    for headed in (True, False):
        text = lines_of([names, *cells[1:]], ",", USUAL if headed else None)
        first = 1 + headed
        yield made(f"beside # in names {headed}", text, truth, first, names=by_line(names, first), meant=EVERY)


def every_found() -> List[Shape]:
    """All families."""
    families = (sections, repeated, odd_units, packed, depths, glued, parted_degrees, kept_beside)
    return [shape for family in families for shape in family()]
