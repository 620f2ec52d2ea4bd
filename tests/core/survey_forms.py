"""Survey files in many forms, with what each of them is: the matrix that recognition is tried on.

Sites on both hemispheres; each is a walk of a rover that stores a point every half metre, or a plain topographic
survey with shots some metres apart.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from typing import Dict, List, Optional, Tuple

import numpy as np
from pyproj import CRS, Transformer

FOOT = {"m": 1.0, "ft": 0.3048, "us-ft": 1200 / 3937}
#: EPSG code, longitude, latitude: both hemispheres, axes in either order, metres and feet, small and large areas.
SITES = (
    (25832, 9.69, 51.56),
    (32633, 15.2, 48.1),
    (2154, 2.35, 46.8),
    (31467, 9.1, 50.2),
    (2180, 19.2, 52.1),
    (27700, -1.5, 53.2),
    (2263, -73.95, 40.75),
    (6405, -110.9, 32.2),
    (28355, 147.1, -37.3),
    (2193, 174.8, -41.2),
    (32719, -70.6, -33.4),
    (31370, 4.4, 50.8),
    (25830, -3.7, 40.4),
    (2056, 7.44, 46.95),
)
#: Words of name, easting, northing, height, code and what is said about unit, by language.
HEADERS: Dict[str, Tuple[Dict[str, str], ...]] = {
    "en": (
        {"name": "Point", "easting": "Easting", "northing": "Northing", "height": "Elevation", "code": "Code"},
        {"name": "ID", "easting": "E", "northing": "N", "height": "Z", "code": "Description"},
        {"name": "Pt No.", "easting": "East {u}", "northing": "North {u}", "height": "Height {u}", "code": "Code"},
    ),
    "fr": (
        {"name": "Matricule", "easting": "Est", "northing": "Nord", "height": "Altitude", "code": "Libellé"},
        {"name": "N°", "easting": "E {u}", "northing": "N {u}", "height": "Z {u}", "code": "Nature"},
    ),
    "de": (
        {"name": "Punktnummer", "easting": "Rechtswert", "northing": "Hochwert", "height": "Höhe", "code": "Punktcode"},
        {"name": "Pkt-Nr.", "easting": "Ost {u}", "northing": "Nord {u}", "height": "Höhe ü. NHN {u}", "code": "Art"},
    ),
    "es": (
        {"name": "Punto", "easting": "Este", "northing": "Norte", "height": "Cota", "code": "Código"},
        {"name": "N°", "easting": "ESTE {u}", "northing": "NORTE {u}", "height": "Elevación {u}", "code": "Código"},
    ),
    "xy": ({"name": "nr", "easting": "X", "northing": "Y", "height": "Z", "code": "code"},),
    "yx": ({"name": "nr", "easting": "Y", "northing": "X", "height": "H", "code": "code"},),
    "none": ({},),
}  # fmt: skip
ORDERS = (
    ("name", "easting", "northing", "height", "code"),
    ("name", "northing", "easting", "height", "code"),
    ("easting", "northing", "height"),
    ("northing", "easting", "height", "name"),
    ("code", "height", "easting", "northing", "name"),
    ("name", "code", "easting", "northing", "height", "sigma_h", "sigma_v", "satellites"),
)
DELIMITERS = (",", ";", "\t", " ")
ENCODINGS = ("utf-8", "utf-8-sig", "utf-16", "cp1252")
WORDS = {"sigma_h": "sigma_h", "sigma_v": "sigma_v", "satellites": "satellites"}


@dataclass(frozen=True)
class Form:
    """One file: bytes, the CRS it is read with (None for none), and what it is in truth."""

    label: str
    raw: bytes
    crs: Optional[CRS]
    columns: Dict[str, int]
    unit: str
    easting_m: np.ndarray
    northing_m: np.ndarray
    height_m: np.ndarray


def walk(
    epsg: int, lon: float, lat: float, step: float, n: int, seed: int
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Easting, northing and height in metres of ``n`` points about ``step`` apart."""
    rng = np.random.default_rng(seed)
    crs = CRS.from_epsg(epsg)
    there = Transformer.from_crs(crs.geodetic_crs, crs, always_xy=True)
    metres = crs.axis_info[0].unit_conversion_factor
    east, north = (value * metres for value in there.transform(lon, lat))
    turn = np.cumsum(rng.normal(0.0, 0.05, n))
    along = step * rng.uniform(0.97, 1.05, n) if step < 1 else step * rng.uniform(0.3, 2.0, n)
    heights = 120.0 + np.cumsum(rng.normal(0.0, 0.02, n)) * (10 if step > 1 else 1)
    return east + np.cumsum(along * np.cos(turn)), north + np.cumsum(along * np.sin(turn)), heights


def forms(count: int = 420, seed: int = 4) -> List[Form]:
    """``count`` files: every value of each dimension many times, in mixed combinations."""
    rng = np.random.default_rng(seed)
    heads = [(key, i) for key, several in HEADERS.items() for i in range(len(several))]
    every = list(
        itertools.product(
            range(len(SITES)), heads, ORDERS, DELIMITERS, ".,", FOOT, ENCODINGS, (0.5, 4.0), (True, False)
        )
    )
    picked = rng.choice(len(every), count, replace=False)
    return [_form(every[i], int(i)) for i in picked]


def _form(one: Tuple, seed: int) -> Form:
    site, (key, variant), order, delimiter, decimal, unit, encoding, step, with_crs = one
    epsg, lon, lat = SITES[site]
    east, north, height = walk(epsg, lon, lat, step, 60, seed)
    said = bool(seed % 3) and "{u}" in str(HEADERS[key][variant])
    words = [_word(HEADERS[key][variant], role, unit if said else "") for role in order]
    factor = FOOT[unit]
    places = 3 + (seed % 2)
    codes = ("GR", "KB", "Straße", "DT")
    lines = [delimiter.join(_quoted(word, delimiter) for word in words)] if key != "none" else []
    for i in range(len(east)):
        fields = {
            "name": str(1001 + i) if seed % 2 else f"P{i + 1}", "easting": f"{east[i] / factor:.{places}f}",
            "northing": f"{north[i] / factor:.{places}f}", "height": f"{height[i] / factor:.{places}f}",
            "code": codes[(i // 7) % 4], "sigma_h": f"{0.008 + 0.001 * (i % 5):.3f}",
            "sigma_v": f"{0.012 + 0.001 * (i % 5):.3f}", "satellites": str(18 + i % 4),
        }  # fmt: skip
        row = [fields[role] if role in ("name", "code") else fields[role].replace(".", decimal) for role in order]
        lines.append(delimiter.join(_quoted(field, delimiter) for field in row))
    text = "# field book\n" * (seed % 5 == 0) + "\n".join(lines) + "\n"
    columns = {role: i + 1 for i, role in enumerate(order)}
    label = (
        f"{epsg} {key}{variant} {'-'.join(order)} {delimiter!r} {decimal} {unit} {encoding} {step} {with_crs} {said}"
    )
    return Form(
        label, text.encode(encoding), CRS.from_epsg(epsg) if with_crs else None, columns, unit, east, north, height
    )


def _word(header: Dict[str, str], role: str, unit: str) -> str:
    word = header.get(role, WORDS.get(role, ""))
    return word.replace("{u}", f"({unit})" if unit else "").strip()


def _quoted(field: str, delimiter: str) -> str:
    return f'"{field}"' if delimiter in field or (delimiter == " " and " " in field) else field


def degrees_text(value: float, form: str, letters: str) -> str:
    """An angle as it is written: ``form`` is d, dm or dms; ``letters`` of the positive and negative side, or ""."""
    size, sign = abs(value), "-" if value < 0 and not letters else ""
    letter = (letters[0] if value >= 0 else letters[1]) if letters else ""
    if form == "d":
        return f"{sign}{size:.8f}{' ' + letter if letter else ''}"
    degree = int(size)
    minute = (size - degree) * 60
    if form == "dm":
        return f"{sign}{degree}° {minute:.6f}'{letter}"
    second = (minute - int(minute)) * 60
    return f"{sign}{degree:02d}°{int(minute):02d}'{second:.5f}\"{letter}"
