"""Survey files in over six hundred shapes, each with what its lines say in truth.

One site, a walk of a rover of a point every half metre with a code that changes now and then; and every way to write
it: what parts the columns, decimal signs, headers in many languages, units, orders of columns, where the code stands,
markers for no value, times, fixed places, names with signs, encodings, degrees.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass, field
from typing import Any, Callable, Dict, Iterator, List, Optional, Sequence, Tuple

import numpy as np
from pyproj import Transformer

N = 48
EPSG = 25832
UNITS = {
    "m": 1.0, "ft": 0.3048, "us-ft": 1200 / 3937, "mm": 0.001, "cm": 0.01, "dm": 0.1, "km": 1000.0, "yd": 0.9144,
    "in": 0.0254,
}  # fmt: skip
CODES = ("KT 1", "KT 2", "BK", "GEL", "Weg/links", "DT")


@dataclass(frozen=True)
class Truth:
    """The points of a site: plan in metres, heights, names, codes, times, and positions in degrees."""

    east: np.ndarray
    north: np.ndarray
    height: np.ndarray
    names: Tuple[str, ...]
    codes: Tuple[str, ...]
    time: np.ndarray
    longitude: np.ndarray
    latitude: np.ndarray


@dataclass(frozen=True)
class Shape:
    """A file. ``truth``: (k, 3) easting, northing, height of the points it holds, by line; ``codes``: of these, None
    where it has none; ``crs``: it is read with; ``geographic``: its plan is in degrees, (k, 3) too. ``options``:
    what the user says from the start. ``meant``: what of the user's is true, an option to the value that answers it.
    """

    label: str
    raw: bytes
    truth: Dict[int, Tuple[float, float, float]]
    codes: Optional[Dict[int, str]] = None
    names: Optional[Dict[int, str]] = None
    time: Optional[Dict[int, float]] = None
    geographic: bool = False
    crs: Optional[int] = EPSG
    suffix: str = ".csv"
    options: Dict[str, Any] = field(default_factory=dict)
    meant: Dict[str, str] = field(default_factory=dict)
    precision: float = 0.0011


def site(seed: int = 3, n: int = N, height: float = 92.0) -> Truth:
    """A walk, in numbers as a file to the millimetre has them."""
    rng = np.random.default_rng(seed)
    turn = np.cumsum(rng.normal(0.0, 0.3, n))
    east = np.round(548240.762 + np.cumsum(0.5 * np.cos(turn)), 3)
    north = np.round(5712395.593 + np.cumsum(0.5 * np.sin(turn)), 3)
    up = np.round(height + np.cumsum(rng.normal(0.0, 0.04, n)), 3)
    codes = tuple(CODES[(i // 6) % len(CODES)] for i in range(n))
    time = 1744182362.0 + np.arange(n) * 1.0
    lon, lat = Transformer.from_crs(EPSG, 4258, always_xy=True).transform(east, north)
    return Truth(east, north, up, tuple(str(1001 + i) for i in range(n)), codes, time, lon, lat)


#: Header words by language: name, easting, northing, height, code.
HEADERS: Dict[str, Tuple[str, str, str, str, str]] = {
    "en": ("Point", "Easting", "Northing", "Elevation", "Code"),
    "en long": ("Point Name", "Easting (m)", "Northing (m)", "Ground Height (m)", "Feature Code"),
    "en short": ("P", "E", "N", "Z", "D"),
    "en remark": ("Pt No.", "East", "North", "RL", "Remark"),
    "en coords": ("ID", "E coordinate", "N coordinate", "Level", "Description"),
    "fr": ("Matricule", "Est", "Nord", "Altitude", "Libellé"),
    "fr long": ("N° point", "Coordonnée E", "Coordonnée N", "Altitude NGF", "Remarque"),
    "de": ("Punktnummer", "Rechtswert", "Hochwert", "Höhe", "Bemerkung"),
    "de grid": ("Pkt-Nr", "Ostwert", "Nordwert", "Höhe NHN", "Punktcode"),
    "es": ("Punto", "Este", "Norte", "Cota", "Código"),
    "it": ("Punto", "Est", "Nord", "Quota", "Descrizione"),
    "nl": ("Puntnr", "Oost", "Noord", "Hoogte", "Omschrijving"),
    "pt": ("Ponto", "Este", "Norte", "Altitude", "Descrição"),
    "pl": ("Nr punktu", "Wschód", "Północ", "Wysokość", "Kod"),
    "cs": ("Číslo bodu", "Východ", "Sever", "Výška", "Kód"),
    "sv": ("Punkt", "Öst", "Norr", "Höjd", "Kod"),
    "da": ("Punktnavn", "Øst", "Nord", "Kote", "Beskrivelse"),
    "fi": ("Piste", "Itä", "Pohjoinen", "Korkeus", "Koodi"),
    "ru": ("Имя точки", "Восток", "Север", "Высота", "Код"),
}
LATIN = (
    "en",
    "en long",
    "en short",
    "en remark",
    "en coords",
    "fr",
    "de",
    "de grid",
    "es",
    "it",
    "nl",
    "pt",
    "sv",
    "da",
)
FIELDS = ("name", "easting", "northing", "height", "code")
ORDERS = (
    ("name", "easting", "northing", "height", "code"),
    ("name", "northing", "easting", "height", "code"),
    ("code", "name", "easting", "northing", "height"),
    ("easting", "northing", "height", "code", "name"),
    ("name", "code", "height", "northing", "easting"),
)


def decimals(values: np.ndarray, unit: str = "m", places: int = 3) -> List[str]:
    """Lengths in metres as a file writes them in ``unit``."""
    return [f"{value / UNITS[unit]:.{places}f}" for value in values]


def truth_of(site_: Truth, first_line: int, skip: Sequence[int] = ()) -> Dict[int, Tuple[float, float, float]]:
    """Line to coordinates, points one a line from ``first_line`` on."""
    rows = zip(site_.east.tolist(), site_.north.tolist(), site_.height.tolist())
    return {first_line + i: row for i, row in enumerate(rows) if i not in skip}


def by_line(values: Sequence[Any], first_line: int, skip: Sequence[int] = ()) -> Dict[int, Any]:
    return {first_line + i: value for i, value in enumerate(values) if i not in skip}


def columns_of(site_: Truth) -> Dict[str, List[str]]:
    return {
        "name": list(site_.names), "easting": decimals(site_.east), "northing": decimals(site_.north),
        "height": decimals(site_.height), "code": list(site_.codes),
    }  # fmt: skip


def lines_of(columns: Sequence[Sequence[str]], delimiter: str, head: Optional[Sequence[str]] = None) -> str:
    rows = [list(head)] if head is not None else []
    rows += [list(row) for row in zip(*columns)]
    return "\n".join(delimiter.join(row) for row in rows) + "\n"


def fixed(columns: Sequence[Sequence[str]], head: Optional[Sequence[str]] = None, gap: int = 2) -> str:
    """Columns at fixed places with at least ``gap`` blanks between, numbers to the right."""
    rows = [list(head)] if head is not None else []
    rows += [list(row) for row in zip(*columns)]
    widths = [max(len(row[j]) for row in rows) for j in range(len(columns))]
    right = [
        any(sign.isdigit() for sign in columns[j][0]) and columns[j][0][0] in "-0123456789" for j in range(len(columns))
    ]
    pad = [[word.rjust(w) if r else word.ljust(w) for word, w, r in zip(row, widths, right)] for row in rows]
    return "\n".join((" " * gap).join(row).rstrip() for row in pad) + "\n"


# Families of shapes


def plain(seed: int = 11, count: int = 230) -> Iterator[Shape]:
    """What parts columns, decimal signs, languages, orders, encodings and line ends, mixed."""
    rng = np.random.default_rng(seed)
    every = list(
        itertools.product(
            (",", ";", "\t", "|", "fixed", ", ", " "), ".,", (*HEADERS, "none", "none"), ORDERS,
            ("utf-8", "utf-8-sig", "cp1252", "utf-16", "utf-16-le"), ("\n", "\r\n", "\r"),
        )
    )  # fmt: skip
    for pick in rng.choice(len(every), 4 * count, replace=False).tolist():
        delimiter, mark, language, order, encoding, end = every[pick]
        if (delimiter.startswith(",") and mark == ",") or (encoding == "cp1252" and language not in (*LATIN, "none")):
            continue
        if delimiter == " " and language in ("en long", "fr long") and order[0] == "code":
            continue
        truth = site(int(pick) % 97)
        columns = columns_of(truth)
        if delimiter == " ":
            columns["code"] = [code.replace(" ", "") for code in columns["code"]]
        for role in ("easting", "northing", "height"):
            columns[role] = [word.replace(".", mark) for word in columns[role]]
        head = None if language == "none" else [HEADERS[language][FIELDS.index(role)] for role in order]
        chosen = [columns[role] for role in order]
        text = fixed(chosen, head) if delimiter == "fixed" else lines_of(chosen, delimiter, head)
        first = 1 if head is None else 2
        meant = ",".join(f"{role}={order.index(role) + 1}" for role in order)
        yield Shape(
            f"plain {delimiter!r} {mark} {language} {'-'.join(word[0] for word in order)} {encoding} {end!r}",
            text.replace("\n", end).encode(encoding),
            truth_of(truth, first),
            by_line(columns["code"], first),
            by_line(truth.names, first),
            meant={"--columns": meant},
        )
        count -= 1
        if not count:
            return


def units() -> Iterator[Shape]:
    """Units said in the header, of plan and heights together or of heights and deviations alone."""
    words = {
        "m": ("(m)", "[m]", "_m", " in metres"), "cm": ("(cm)", "[cm]", " in cm"), "mm": ("(mm)", "[mm]", "_mm"),
        "dm": ("(dm)", "[dm]"), "km": ("(km)", "[km]"), "yd": ("(yd)", "(yards)"),
        "ft": ("(international feet)", "[ift]", "(intl ft)"), "us-ft": ("(sft)", "(ftUS)", "[US survey feet]"),
        "in": ("(in)", "(inches)"),
    }  # fmt: skip
    for unit, several in words.items():
        places = {"mm": 0, "cm": 1, "km": 6}.get(unit, 4)
        for said in several:
            for both in (True, False):
                truth = site(hash_of(unit + said))
                plan = unit if both else "m"
                head = [
                    "name",
                    f"Easting {said if both else '(m)'}",
                    f"Northing {said if both else '(m)'}",
                    f"Height {said}",
                ]
                columns = [
                    truth.names, decimals(truth.east, plan, places if both else 3),
                    decimals(truth.north, plan, places if both else 3), decimals(truth.height, unit, places),
                ]  # fmt: skip
                yield Shape(
                    f"units {said} {'all' if both else 'heights'}", lines_of(columns, ",", head).encode(),
                    truth_of(truth, 2), meant={"--units-from": "header", "--unit": plan, "--height-unit": unit},
                )  # fmt: skip
        truth = site(hash_of(unit))
        columns = [truth.names, decimals(truth.east), decimals(truth.north), decimals(truth.height, unit, places)]
        below = lines_of(columns, ";", ["Point", "Easting", "Northing", "Height"]).split("\n")
        below.insert(1, ";".join(("-", "m", "m", several[0].strip("()[]"))))
        yield Shape(f"units line {unit}", "\n".join(below).encode(), truth_of(truth, 3))
    for option in ("m", "ft"):
        truth = site(5)
        columns = [
            truth.names,
            decimals(truth.east, "ft", 4),
            decimals(truth.north, "ft", 4),
            decimals(truth.height, "ft", 4),
        ]
        yield Shape(
            f"units against option {option}", lines_of(columns, ",", ["n", "E (ift)", "N (ift)", "Z (ift)"]).encode(),
            truth_of(truth, 2), options={"unit": option}, meant={"--units-from": "header"},
        )  # fmt: skip


def hash_of(text: str) -> int:
    return sum(ord(sign) * (i + 7) for i, sign in enumerate(text)) % 1000


def markers() -> Iterator[Shape]:
    """Words and numbers for no height, few and many, with and without a header."""
    words = (
        "*", "***", "NULL", "NaN", "n/a", "-9999", "-9999.000", "-99", "-99.99", "0", "0.000", "99999", "9999.999",
        "-32768", "-", "---", "?", "N.A.", "#N/A", "999999", "k.A.", "none", "-999.99", "1e+20", "88888.888",
    )  # fmt: skip
    for word, share, headed in itertools.product(words, ("one", "tenth", "third"), (True, False)):
        truth = site(hash_of(word + share), height=92.0)
        skip = {"one": [17], "tenth": list(range(3, N, 10)), "third": list(range(1, N, 3))}[share]
        height = [word if i in skip else text for i, text in enumerate(decimals(truth.height))]
        pdop = [f"{1.2 + 0.1 * (i % 5):.1f}" for i in range(N)]
        columns = [truth.names, decimals(truth.east), decimals(truth.north), height, truth.codes, pdop]
        head = ["P", "E", "N", "H", "code", "PDOP"] if headed else None
        first = 2 if headed else 1
        yield Shape(
            f"markers {word} {share} {headed}", lines_of(columns, ",", head).encode(), truth_of(truth, first, skip),
            by_line(truth.codes, first, skip) if headed else None,
            meant={"--columns": "name=1,easting=2,northing=3,height=4,code=5,pdop=6", "--no-value": word},
        )  # fmt: skip
    for word in ("0", "-9999", "0.000", "999999.999"):
        truth = site(hash_of(word))
        skip = [5, 6, 30]
        plan = [[word if i in skip else text for i, text in enumerate(decimals(v))] for v in (truth.east, truth.north)]
        columns = [truth.names, *plan, decimals(truth.height), truth.codes]
        for head in (["P", "E", "N", "H", "code"], None):
            first = 1 if head is None else 2
            yield Shape(
                f"markers of plan {word} {head is None}", lines_of(columns, ",", head).encode(),
                truth_of(truth, first, skip), meant={"--columns": "name=1,easting=2,northing=3,height=4,code=5"},
            )  # fmt: skip


def times() -> Iterator[Shape]:
    """Times of all ordinary forms beside codes with blanks."""
    forms = (
        "%Y-%m-%d %H:%M:%S", "%Y-%m-%dT%H:%M:%SZ", "%d.%m.%Y %H:%M:%S", "%d/%m/%Y %H:%M:%S", "%m/%d/%Y %I:%M:%S %p",
        "%Y/%m/%d %H:%M:%S", "%d-%b-%Y %H:%M:%S", "%Y%m%d %H%M%S", "%Y-%m-%d %H:%M:%S.250", "%H:%M:%S",
        "%d.%m.%y %H:%M:%S",
        "%b %d %Y %H:%M:%S", "%Y-%m-%d %H:%M:%S+02:00", "%I:%M:%S %p",
    )  # fmt: skip
    import datetime as dt

    for form, delimiter, headed in itertools.product(forms, (",", ";", "\t"), (True, False)):
        truth = site(hash_of(form + delimiter))
        moments = [dt.datetime.fromtimestamp(1745478362 + i, dt.timezone.utc) for i in range(N)]
        said = [moment.strftime(form) for moment in moments]
        columns = [truth.names, decimals(truth.east), decimals(truth.north), decimals(truth.height), truth.codes, said]
        head = ["name", "easting", "northing", "height", "code", "time"] if headed else None
        first = 2 if headed else 1
        expected = np.array([moment.timestamp() for moment in moments])
        expected += 0.25 * form.endswith("250") - 7200 * form.endswith("+02:00")
        if "%d" not in form:
            expected = np.mod(expected, 86400)
        yield Shape(
            f"times {form} {delimiter!r} {headed}", lines_of(columns, delimiter, head).encode(), truth_of(truth, first),
            by_line(truth.codes, first) if headed else None, time=by_line(expected.tolist(), first) if headed else None,
            meant={"--columns": "name=1,easting=2,northing=3,height=4,code=5,time=6"},
        )  # fmt: skip
    truth = site(1)
    for day, clock in (("%d.%m.%Y", "%H:%M:%S"), ("%Y-%m-%d", "%H:%M:%S"), ("%m/%d/%Y", "%I:%M:%S %p")):
        moments = [dt.datetime.fromtimestamp(1745478362 + i, dt.timezone.utc) for i in range(N)]
        columns = [
            truth.names, [moment.strftime(day) for moment in moments], [moment.strftime(clock) for moment in moments],
            decimals(truth.east), decimals(truth.north), decimals(truth.height),
        ]  # fmt: skip
        head = ["name", "Date", "Time", "easting", "northing", "height"]
        yield Shape(
            f"times in two columns {day}", lines_of(columns, ",", head).encode(), truth_of(truth, 2),
            time=by_line([moment.timestamp() for moment in moments], 2),
        )  # fmt: skip


def codes() -> Iterator[Shape]:
    """Codes under many words and at every place."""
    words = (
        "D", "Remark", "Remarks", "Kod", "Kód", "Bemerkung", "Comment", "Notes", "Desc", "Feature", "Opis", "Libellé",
        "Nature",
        "Objektart", "Codice", "Descripción", "Selite", "Omschrijving", "Popis", "Point code", "Attribute", "C",
    )  # fmt: skip
    for word, place in itertools.product(words, (0, 1, 4)):
        truth = site(hash_of(word) + place)
        columns: List[Sequence[str]] = [
            truth.names,
            decimals(truth.east),
            decimals(truth.north),
            decimals(truth.height),
        ]
        head = ["Name", "Easting", "Northing", "Height"]
        columns.insert(place, truth.codes)
        head.insert(place, word)
        yield Shape(
            f"codes {word} at {place}", lines_of(columns, ";", head).encode(), truth_of(truth, 2),
            by_line(truth.codes, 2), by_line(truth.names, 2),
        )  # fmt: skip
    for place, delimiter in itertools.product((0, 1, 4), (",", ";", "\t")):
        truth = site(place + 40)
        columns = [truth.names, decimals(truth.east), decimals(truth.north), decimals(truth.height)]
        order = ["name", "easting", "northing", "height"]
        columns.insert(place, truth.codes)
        order.insert(place, "code")
        meant = ",".join(f"{role}={i + 1}" for i, role in enumerate(order))
        yield Shape(
            f"codes without a header at {place} {delimiter!r}", lines_of(columns, delimiter).encode(),
            truth_of(truth, 1), by_line(truth.codes, 1), by_line(truth.names, 1), meant={"--columns": meant},
        )  # fmt: skip


def signs() -> Iterator[Shape]:
    """Names that begin with signs that other files use for comments, and such comments."""
    for sign, comment, headed in itertools.product(("#", "//", "%", "!", "--", "*"), (False, True), (True, False)):
        if comment and sign != "#":
            continue
        truth = site(hash_of(sign))
        names = [f"{sign}{name}" for name in truth.names]
        columns = [names, decimals(truth.east), decimals(truth.north), decimals(truth.height), truth.codes]
        head = ["name", "easting", "northing", "height", "code"] if headed else None
        text = lines_of(columns, ",", head)
        above = f"{sign} field book of Monday\n" if comment and sign == "#" else ""
        first = 1 + headed + bool(above)
        yield Shape(
            f"signs in names {sign} {bool(above)} {headed}", (above + text).encode(), truth_of(truth, first),
            names=by_line(names, first), meant={"--columns": "name=1,easting=2,northing=3,height=4,code=5"},
        )  # fmt: skip
    for sign in ("#", "//", "%", "!"):
        truth = site(hash_of(sign) + 1)
        text = lines_of([truth.names, decimals(truth.east), decimals(truth.north), decimals(truth.height)], ",")
        head = f"{sign} name,easting,northing,height\n" if sign == "#" else "name,easting,northing,height\n"
        yield Shape(f"comments {sign}", (f"{sign} survey of Monday\n" + head + text).encode(), truth_of(truth, 3))


def fixed_places() -> Iterator[Shape]:
    """Tables for people: headers of two words, codes of two words, cells that lack."""
    heads = (
        ["Point Name", "Easting", "Northing", "Height", "Point Code"],
        ["Pt No.", "East (m)", "North (m)", "Elev. (m)", "Remark"],
        ["Name", "Y coordinate", "X coordinate", "Ground level", "Code"], None,
        ["Punkt Nr.", "Rechtswert", "Hochwert", "Höhe NHN", "Bemerkung"],
    )  # fmt: skip
    for head, lacking, wide in itertools.product(heads, (False, True), (False, True)):
        truth = site(hash_of(str(head)) + lacking)
        code = ["" if lacking and i % 7 == 3 else one for i, one in enumerate(truth.codes)]
        code[0] = truth.codes[0]
        columns = [truth.names, decimals(truth.east), decimals(truth.north), decimals(truth.height), code]
        text = fixed(columns, head, 5 if wide else 2)
        first = 1 if head is None else 2
        yield Shape(
            f"fixed {head} {lacking} {wide}", text.encode(), truth_of(truth, first), by_line(code, first),
            meant={"--columns": "name=1,easting=2,northing=3,height=4,code=5"},
        )  # fmt: skip


def thousands() -> Iterator[Shape]:
    """Numbers in groups of three digits."""
    for (part, mark), delimiter, headed in itertools.product(
        ((",", "."), (".", ","), (" ", "."), (" ", ","), ("'", "."), ("\u00a0", ","), ("\u202f", ","), ("’", ".")),
        (";", "\t", "quoted"), (True, False),
    ):  # fmt: skip
        truth = site(hash_of(part + mark + delimiter))
        columns = [[f"{value:,.3f}".translate({44: part, 46: mark}) for value in values]
                   for values in (truth.east, truth.north, truth.height)]  # fmt: skip
        if delimiter == "quoted":
            columns = [[f'"{word}"' for word in column] for column in columns]
        sign = "," if delimiter == "quoted" else delimiter
        head = ["name", "easting", "northing", "height", "code"] if headed else None
        first = 2 if headed else 1
        yield Shape(
            f"thousands {part!r} {mark} {delimiter!r} {headed}",
            lines_of([truth.names, *columns, truth.codes], sign, head).encode(), truth_of(truth, first),
            meant={"--columns": "name=1,easting=2,northing=3,height=4,code=5"},
        )  # fmt: skip


def degrees() -> Iterator[Shape]:
    """Latitudes and longitudes in every way."""

    def dms(value: float) -> Tuple[int, int, float]:
        total = round(abs(value) * 3600, 6)
        return int(total // 3600), int(total % 3600 // 60), total % 60

    def packed(value: float) -> str:
        d, m, s = dms(value)
        return f"{d}.{m:02d}{s:09.6f}".replace(".", "#", 1).replace(".", "").replace("#", ".")

    def packed_seconds(value: float) -> str:
        d, m, s = dms(value)
        return f"{d}{m:02d}{s:09.6f}"

    def packed_minutes(value: float) -> str:
        d = int(value)
        return f"{d}{(value - d) * 60:011.8f}"

    def colons(value: float) -> str:
        d, m, s = dms(value)
        return f"{d}:{m:02d}:{s:08.5f}"

    def blanks(value: float) -> str:
        d, m, s = dms(value)
        return f"{d} {m:02d} {s:08.5f}"

    def with_signs(value: float) -> str:
        d, m, s = dms(value)
        return f"{d}°{m:02d}'{s:08.5f}\""

    def plain_degrees(value: float) -> str:
        return f"{value:.9f}"

    ways: Dict[str, Tuple[Callable[[float], str], str]] = {
        "": (plain_degrees, "degrees"), " (deg)": (plain_degrees, "degrees"), " (°)": (plain_degrees, "degrees"),
        " DMS": (packed, "dd.mmss"), " (DD.MMSS)": (packed, "dd.mmss"), " [DDMM.MMMM]": (packed_minutes, "ddmm.m"),
        " (ddmmss.s)": (packed_seconds, "ddmmss.s"), " (gon)": (lambda v: f"{v / 0.9:.9f}", "gon"),
        " (rad)": (lambda v: f"{np.radians(v):.11f}", "radians"), " :": (colons, "degrees"),
        " signs": (with_signs, "degrees"), " blanks": (blanks, "degrees"), " NMEA": (packed_minutes, "ddmm.m"),
        " packed unsaid": (packed_minutes, "ddmm.m"),
    }  # fmt: skip
    words = (("Latitude", "Longitude"), ("Lat", "Lon"), ("Breite", "Länge"), ("Szerokość", "Długość"))
    for (said, (write, form)), (lat, lon), headed in itertools.product(ways.items(), words, (True, False)):
        if not headed and (lat != "Lat" or form not in ("degrees",)):
            continue
        truth = site(hash_of(said + lat))
        letters = said in (" signs", " :") and not headed
        fields = [[write(v) + (side if letters else "") for v in values]
                  for values, side in ((truth.latitude, "N"), (truth.longitude, "E"))]  # fmt: skip
        unit = said if form != "degrees" or said in (" (deg)", " (°)") else ""
        unit = "" if "unsaid" in said else unit
        head = ["name", lat + unit, lon + unit, "height"] if headed else None
        first = 2 if headed else 1
        rows = zip(truth.longitude.tolist(), truth.latitude.tolist(), truth.height.tolist())
        yield Shape(
            f"degrees{said} {lat} {headed}",
            lines_of([truth.names, *fields, decimals(truth.height)], ";", head).encode(),
            {first + i: row for i, row in enumerate(rows)}, geographic=True, precision=2e-8,
            meant={"--columns": "name=1,latitude=2,longitude=3,height=4", "--angles": form},
        )  # fmt: skip
    for west in (False, True):
        truth = site(8)
        lon = -truth.longitude if west else truth.longitude
        columns = [
            truth.names, [packed_minutes(v) for v in truth.latitude], ["N"] * N,
            [packed_minutes(v) for v in truth.longitude], ["W" if west else "E"] * N, decimals(truth.height),
        ]  # fmt: skip
        head = ["name", "Latitude (DDMM.MMMM)", "N/S", "Longitude (DDMM.MMMM)", "E/W", "height"]
        rows = zip(lon.tolist(), truth.latitude.tolist(), truth.height.tolist())
        yield Shape(
            f"degrees sides {west}", lines_of(columns, ",", head).encode(), {2 + i: row for i, row in enumerate(rows)},
            geographic=True, crs=None, precision=2e-8, meant={"--angles": "ddmm.m"},
        )  # fmt: skip


def poles() -> Iterator[Shape]:
    """Heights of the antenna, or of the ground beside pole heights."""
    for word, unit, antenna in itertools.product(
        ("Pole height", "Antenna height (m)", "Rod height", "Stabhöhe", "pole_height [cm]"), ("m",), (True, False)
    ):
        truth = site(hash_of(word))
        pole = 2.0
        shown = f"{pole * 100:.0f}" if "cm" in word else f"{pole:.3f}"
        height = decimals(truth.height + pole * antenna, unit)
        columns = [truth.names, decimals(truth.east), decimals(truth.north), height, [shown] * N]
        yield Shape(
            f"poles {word} {antenna}", lines_of(columns, ",", ["name", "E", "N", "H", word]).encode(),
            truth_of(truth, 2),
            meant={"--heights-of": "antenna" if antenna else "ground"},
        )  # fmt: skip
    for word in ("Elevation APC", "Antenna elevation", "Height (APC)"):
        truth = site(hash_of(word))
        columns = [truth.names, decimals(truth.east), decimals(truth.north), decimals(truth.height + 2.0)]
        yield Shape(
            f"poles unsaid {word}", lines_of(columns, ",", ["name", "E", "N", word]).encode(), truth_of(truth, 2),
            meant={"--pole-height": "2.000"},
        )  # fmt: skip


def odd() -> Iterator[Shape]:
    """What stands around and in the lines of files as people leave them."""
    usual = ["Point", "Easting", "Northing", "Height", "Code"]
    every = {"--columns": "name=1,easting=2,northing=3,height=4,code=5"}

    def shape(label: str, text: str, truth: Truth, first: int, encoding: str = "utf-8", **more: Any) -> Shape:
        return Shape(f"odd {label}", text.encode(encoding), truth_of(truth, first, more.pop("skip", ())), **more)

    def whole(seed: int, height: float = 92.0) -> Tuple[Truth, List[List[str]]]:
        truth = site(seed, height=height)
        return truth, list(columns_of(truth).values())

    for delimiter in (",", ";", "\t"):
        truth, columns = whole(200)
        lacking = [*columns, [""] * N, [""] * N]
        text = lines_of(lacking, delimiter, [*usual, "", ""])
        yield shape(f"empty columns at the end {delimiter!r}", text, truth, 2, codes=by_line(truth.codes, 2))
    for above in (["Job: Meadow", "Date: 2025-04-09", "Units: metres", ""], ["SURVEY REPORT", "====", "Operator;J. D."],
                  ["Project", "Meadow", "", "Points:"]):  # fmt: skip
        truth, columns = whole(hash_of(above[0]))
        yield shape(
            f"lines above {above[0]}", "\n".join(above) + "\n" + lines_of(columns, ";", usual), truth, len(above) + 2
        )
    truth, columns = whole(230)
    yield shape("lines below", lines_of(columns, ",", usual) + "\nEnd of file\n48 points\n", truth, 2)
    quoted = [[f'"{word}"' for word in column] for column in columns]
    yield shape("quotes around all", lines_of(quoted, ",", [f'"{word}"' for word in usual]), truth, 2)
    exponents = [[f"{value:.10e}" for value in values] for values in (truth.east, truth.north, truth.height)]
    yield shape("exponents", lines_of([truth.names, *exponents], ",", usual[:4]), truth, 2)
    plus = [[f"+{word}" for word in column] for column in columns[1:4]]
    yield shape("plus signs", lines_of([truth.names, *plus], ";", usual[:4]), truth, 2)
    padded = [[f" {word.rjust(14)} " for word in column] for column in columns]
    yield shape("padded cells", lines_of(padded, ";", [f"{word} " for word in usual]), truth, 2)
    table = lines_of([[""] * N, *columns, [""] * N], "|", ["", *usual, ""]).split("\n")
    table.insert(1, "|---|---|---|---|---|")
    yield shape("a table of bars", "\n".join(table), truth, 3, codes=by_line(truth.codes, 3), meant=every)
    for delimiter, headed in itertools.product((",", ";"), (True, False)):
        truth, columns = whole(243)
        figures = [
            [f"0.0{8 + i % 4}" for i in range(N)], [f"0.01{i % 5}" for i in range(N)],
            [str(18 + i % 4) for i in range(N)], [f"1.{i % 3}" for i in range(N)], ["FIXED"] * N,
        ]  # fmt: skip
        head = [*usual, "HRMS", "VRMS", "Sats", "PDOP", "Solution"] if headed else None
        yield shape(
            f"figures of quality {delimiter} {headed}", lines_of([*columns, *figures], delimiter, head), truth,
            1 + headed, meant={"--columns": "name=1,easting=2,northing=3,height=4,code=5,sigma_h=6,sigma_v=7"},
        )  # fmt: skip
    truth, columns = whole(244)
    angles = [[f"{value:.9f}" for value in values] for values in (truth.latitude, truth.longitude)]
    text = lines_of([truth.names, *angles, *columns[1:4]], ",", ["Name", "Latitude", "Longitude", *usual[1:4]])
    yield shape("degrees and plan", text, truth, 2)
    for height, headed in itertools.product((-3.0, -120.0, 0.4, 3500.0), (True, False)):
        truth, columns = whole(int(abs(height)), height)
        text = lines_of(columns, ",", usual if headed else None)
        yield shape(f"height {height} {headed}", text, truth, 1 + headed, meant=every)
    for zero in ("0.000", ""):
        truth, columns = whole(260, 4.0)
        columns[3] = [zero if i in (3, 9, 20) else word for i, word in enumerate(columns[3])]
        yield shape(
            f"low heights and {zero!r}",
            lines_of(columns, ",", usual),
            truth,
            2,
            skip=(3, 9, 20),
            meant={"--no-value": "0"},
        )
    for head in (
        ["POINT_ID", "EASTING_M", "NORTHING_M", "ELEVATION_M", "FEATURE_CODE"], ["pt", "e_m", "n_m", "h_m", "c"],
        ["ptName", "eastingM", "northingM", "elevM", "desc"], ["Point-ID", "East.", "North.", "Elev.", "Desc."],
        ["PointID", "XEast", "YNorth", "ZElev", "Code"], ["numéro", "X (m)", "Y (m)", "Z (m)", "code"],
        ["punt", "coord. E", "coord. N", "cota (m)", "descripción"], ["PT#", "EAST", "NORTH", "ELEV", "DESC"],
        ["id", "x_coord", "y_coord", "z_coord", "remarks"],
        ["Punkt", "E [UTM32]", "N [UTM32]", "Höhe (DHHN2016)", "Art"],
        ["n", "E (m)", "N (m)", "H (m)", "D"],
    ):  # fmt: skip
        truth, columns = whole(hash_of(head[0]))
        yield shape(
            f"header {head[0]}", lines_of(columns, ",", head), truth, 2, codes=by_line(truth.codes, 2), meant=every
        )
    for encoding in ("utf-16-be", "utf-32", "iso8859-15"):
        truth, columns = whole(297)
        columns[4] = ["Schlöße"] * N
        mark = "\ufeff" if encoding == "utf-16-be" else ""
        yield shape(f"encoding {encoding}", mark + lines_of(columns, ",", usual), truth, 2, encoding)
    for line, unit in (("# Units: US survey feet", "us-ft"), ("# units = metres", "m"), ("# Heights in cm", "cm")):
        truth = site(hash_of(line))
        plan = "m" if line.startswith("# Heights") else unit
        text = lines_of([truth.names, decimals(truth.east, plan, 4), decimals(truth.north, plan, 4),
                         decimals(truth.height, unit, 4)], ",", usual[:4])  # fmt: skip
        yield shape(f"comment {line}", f"{line}\n{text}", truth, 3, crs=None, meant={"--unit": unit})
    for delimiter in (":", "/", "~", "^"):
        truth, columns = whole(315)
        yield shape(f"seldom {delimiter}", lines_of(columns[:4], delimiter, usual[:4]), truth, 2)
    truth, columns = whole(314, -5.0)
    minus = [word.replace("-", "\u2212") for word in columns[3]]
    yield shape("a minus sign of print", lines_of([*columns[:3], minus], ";", usual[:4]), truth, 2)
    truth, columns = whole(313)
    text = lines_of(
        [truth.names, ["rem"] * N, truth.codes, *columns[1:4]], ";", ["Name", "Remark", "Code", *usual[1:4]]
    )
    yield shape("a remark before the code", text, truth, 2, codes=by_line(truth.codes, 2))


def every_shape() -> List[Shape]:
    """All families."""
    families = (plain, units, markers, times, codes, signs, fixed_places, thousands, degrees, poles, odd)
    return [shape for family in families for shape in family()]
