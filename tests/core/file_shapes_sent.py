"""Survey files as offices of many countries send them, tried without a look at how they are read: grids of a country
each with its own words and order, columns beside the coordinates, exponents, lines as one cell, titles and ends.

Words and orders of columns from memory, common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Callable, Iterator, List, NamedTuple

import numpy as np
from pyproj import Transformer

from tests.core.file_shapes import Shape, Truth, columns_of, decimals, hash_of, lines_of, site
from tests.core.file_shapes_found import EVERY, USUAL, made

FOUR = {"--columns": "name=1,easting=2,northing=3,height=4"}
NORTH_FIRST = {"--columns": "name=1,northing=2,easting=3,height=4"}


class Grid(NamedTuple):
    """A CRS, a place of it (easting, northing), a header, and how the columns stand: delimiter, north first."""

    epsg: int
    east: float
    north: float
    head: str
    north_first: bool = True


GRIDS = {
    "za": Grid(2048, 37654.0, 3756432.0, "Point,Y,X,Z", False), "pl": Grid(2178, 7501234.0, 5801234.0, "Nr,X,Y,H"),
    "pl country": Grid(2180, 637234.0, 487234.0, "NR,X_1992,Y_1992,H"),
    "kr": Grid(5186, 198765.0, 551234.0, "측점,X,Y,Z"), "at": Grid(31256, 1234.0, 340123.0, "PNR,Y,X,H", False),
    "jp": Grid(6677, -7654.0, -35432.0, "点名,X座標,Y座標,標高"),
    "ru": Grid(28407, 7412345.0, 6171234.0, "№,X,Y,Отметка"), "hu": Grid(23700, 650123.0, 238765.0, "Psz,Y,X,Z", False),
    "ro": Grid(3844, 587654.0, 327654.0, "Nr. pct,X (Nord),Y (Est),Z (Cota)"),
    "tr": Grid(5254, 445123.0, 4538765.0, "Nokta,Y(Sağa),X(Yukarı),Kot", False),
    "sa": Grid(32638, 654321.0, 2734567.0, "النقطة,شرقيات,شماليات,المنسوب", False),
    "be": Grid(31370, 149876.0, 170543.0, "Punt,X,Y,Z (TAW)", False), "nl": Grid(28992, 121687.0, 487234.0,
    "punt,x_rd,y_rd,z_nap", False), "pt": Grid(3763, -87654.0, -98765.0, "Ponto,M,P,Cota", False),
    "vn": Grid(9210, 587654.0, 2323456.0, "Tên điểm,X(m),Y(m),H(m)"), "in": Grid(32643, 543210.0, 1432109.0,
    "Sr. No.,Northing,Easting,RL"), "nz": Grid(2193, 1756789.0, 5920123.0, "Point,mN,mE,RL"),
    "mx": Grid(32614, 512345.0, 2154321.0, "ID,Y,X,Z"), "my": Grid(3375, 412345.0, 345678.0, "STN,NORTH,EAST,R.L."),
    "fi": Grid(3879, 25496789.0, 6672345.0, "Piste,P,I,Korkeus"), "ee": Grid(3301, 541234.0, 6589012.0, "Nr,X,Y,H"),
}  # fmt: skip


def moved(truth: Truth, epsg: int, east: float, north: float) -> Truth:
    """The site with its first point at another place of another CRS."""
    new_east = np.round(truth.east - truth.east[0] + east, 3)
    new_north = np.round(truth.north - truth.north[0] + north, 3)
    lon, lat = Transformer.from_crs(epsg, 4326, always_xy=True).transform(new_east, new_north)
    return replace(truth, east=new_east, north=new_north, longitude=lon, latitude=lat)


def countries() -> Iterator[Shape]:
    for country, grid in GRIDS.items():
        truth = moved(site(hash_of(country)), grid.epsg, grid.east, grid.north)
        name, east, north, up, _ = columns_of(truth).values()
        plan = [north, east] if grid.north_first else [east, north]
        text = lines_of([name, *plan, up], ",", grid.head.split(","))
        meant = NORTH_FIRST if grid.north_first else FOUR
        yield made(f"sent {country}", text, truth, 2, crs=grid.epsg, meant=meant)


def exponents() -> Iterator[Shape]:
    """Numbers as programs of computing centres print them, between blanks, with and without a header."""
    for sign in "EeDd":
        for headed in (False, True):
            truth = site(hash_of(f"{sign}{headed}"))
            columns = [list(truth.names)]
            for values in (truth.east, truth.north, truth.height):
                columns.append([f"{value:.9E}".replace("E", sign) for value in values])
            text = lines_of(columns, " ", USUAL[:4] if headed else None)
            yield made(f"sent exponents {sign} {headed}", text, truth, 1 + headed, meant=FOUR)


def whole_lines() -> Iterator[Shape]:
    """Lines as one cell in quotes, and a file whose end a logger without power filled with NULs."""
    for delimiter, mark in ((",", "."), (";", ","), ("\t", ".")):
        truth = site(hash_of("quoted" + delimiter))
        columns = [[one.replace(".", mark) for one in column] for column in list(columns_of(truth).values())[:4]]
        rows = lines_of(columns, delimiter, USUAL[:4]).splitlines()
        yield made(f"sent quoted lines {delimiter!r}", "".join(f'"{row}"\n' for row in rows), truth, 2, meant=FOUR)
    truth = site(hash_of("quotes within"))
    rows = [",".join([*row[:4], f'""{row[4]}, wet""']) for row in zip(*columns_of(truth).values())]
    yield made("sent quotes within", "".join(f'"{row}"\n' for row in [",".join(USUAL), *rows]), truth, 2, meant=EVERY)
    truth = site(hash_of("power"))
    text = lines_of(list(columns_of(truth).values()), ",", USUAL)
    yield made("sent power lost", text + "\0" * 700, truth, 2, meant=EVERY)


#: Label to header words and the cells of a row of (name, east, north, up, k), all beside the coordinates.
BESIDE = {
    "elevation mask": ("Name,E,N,Elevation mask,Height", lambda p, e, n, h, k: [p, e, n, "10", h]),
    "heights first": ("Höhe,Hoch,Rechts,Nr", lambda p, e, n, h, k: [h, n, e, p]),
    "behind quality": (
        "Id,East,North,HRMS,VRMS,Status,Elev",
        lambda p, e, n, h, k: [p, e, n, ".012", ".021", "FIX", h]),
    "cut and fill": ("Name,Easting,Northing,Elevation,Design Elevation,Cut/Fill",
                     lambda p, e, n, h, k: [p, e, n, h, f"{float(h) - 0.5:.3f}", "0.500"]),
    "difference first": ("Name,Easting,Northing,dZ,Z", lambda p, e, n, h, k: [p, e, n, "0.500", h]),
    "station": ("Pt,Station,Offset,E,N,Z", lambda p, e, n, h, k: [p, f"1+{200 + k}.50", f"{-2.5 + k % 3}", e, n, h]),
    "levelling": ("Pt,E,N,BS,FS,HPC,RL", lambda p, e, n, h, k: [p, e, n, "1.200", "2.300", "95.000", h]),
    "river": ("Name,E,N,Water level,Depth,Bed level",
              lambda p, e, n, h, k: [p, e, n, "99.500", f"{99.5 - float(h):.3f}", h]),
    "trees": ("Name,E,N,Tree height,Ground level", lambda p, e, n, h, k: [p, e, n, f"{5 + k % 11}.0", h]),
    "angles": (
        "Pt,Hz,V,SD,E,N,H",
        lambda p, e, n, h, k: [p, f"{123.4 + k:.4f}", "99.1000", f"{30 + k * 0.1:.3f}", e, n, h]),
    "relative": (
        "Name,Easting,Northing,Elevation,Rel. height",
        lambda p, e, n, h, k: [p, e, n, h, f"{float(h) - 90:.3f}"]),
    "undulation": ("Name,Easting,Northing,Geoid height,Height", lambda p, e, n, h, k: [p, e, n, "47.310", h]),
}  # fmt: skip


def beside() -> Iterator[Shape]:
    """Columns of other heights and lengths beside those of the ground."""
    for label, (head, cells) in BESIDE.items():
        make: Callable[..., List[str]] = cells
        truth = site(hash_of(label))
        columns = columns_of(truth)
        rows = zip(columns["name"], columns["easting"], columns["northing"], columns["height"], range(len(truth.names)))
        text = "".join(",".join(make(*row)) + "\n" for row in rows)
        yield made(f"sent beside {label}", f"{head}\n{text}", truth, 2)


def around() -> Iterator[Shape]:
    """Titles with numbers, ends with sums, heights of the antenna in feet, units of heights in a column."""
    head, truth = ",".join(USUAL[:4]), site(hash_of("around"))
    rows = lines_of(list(columns_of(truth).values())[:4], ",")
    lows = [f"{values.min():.3f}" for values in (truth.east, truth.north, truth.height)]
    highs = [f"{values.max():.3f}" for values in (truth.east, truth.north, truth.height)]
    ends = f"Min,{','.join(lows)}\nMax,{','.join(highs)}\n"
    yield made("sent end min max", f"{head}\n{rows}{ends}", truth, 2)
    yield made("sent title numbers", f"Job 2024,17\nScale 1.0000,\nPoints 48,5\n\n{head}\n{rows}", truth, 6)
    yield made("sent title feet of a base", f"Distance to base: 1200 ft\nTolerance 0.05 ft\n{head}\n{rows}", truth, 4)
    columns = list(columns_of(truth).values())[:3]
    feet = [*columns, decimals(truth.height, "ft", 5), ["FT"] * len(truth.names)]
    yield made("sent unit in a column", lines_of(feet, ",", ["Name", "E", "N", "H", "Unit of H"]), truth, 2)
    high = [*columns, decimals(truth.height + 1.8), decimals(np.full(len(truth.names), 1.8), "ft", 5)]
    words = ["Name", "E", "N", "Antenna Elevation", "Pole height (ft)"]
    yield made("sent pole in feet", lines_of(high, ",", words), truth, 2)


def downwards() -> Iterator[Shape]:
    """Heights that count down, as a word of their header says."""
    for label, word in {
        "sign": "Z (positive down)", "word": "Height downwards", "datum": "Depth below datum", "de": "Höhe abwärts",
    }.items():  # fmt: skip
        truth = site(hash_of(label))
        columns = list(columns_of(truth).values())
        text = lines_of([*columns[:3], decimals(-truth.height)], ",", [*USUAL[:3], word])
        yield made(f"sent down {label}", text, truth, 2, meant={"--heights-of": "depth"})


def every_sent() -> List[Shape]:
    return [*countries(), *exponents(), *whole_lines(), *beside(), *around(), *downwards()]
