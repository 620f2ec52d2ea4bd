"""Small surveys of several kinds for the gate: clean ones, and lines gone wrong in them."""

from __future__ import annotations

import numpy as np

from plugin.core.points.pointset import make_points

EAST, NORTH = 500_000.0, 5_700_000.0


def to_and_fro(rows=12, length=60.0, step=0.5, apart=3.0, seed=0):
    """East, north, height of a walk to and fro that stores a point every ``step``, short legs too."""
    random = np.random.default_rng(seed)
    places = []
    along = np.arange(0.0, length, step)
    for row in range(rows):
        there = along if row % 2 == 0 else along[::-1]
        places += [(u, row * apart) for u in there]
        if row < rows - 1:
            places += [(there[-1], row * apart + v) for v in np.arange(step, apart, step)]
    xy = np.array(places) + random.normal(0, 0.03, (len(places), 2))
    height = 100 + 0.02 * xy[:, 0] + 0.3 * np.sin(xy[:, 1] / 15) + random.normal(0, 0.012, len(xy))
    return EAST + xy[:, 0], NORTH + xy[:, 1], height


def times(count, step=0.42):
    return 1.7e9 + step * np.arange(count)


def survey(east, north, height, name=None, code=None, time=None, **more):
    """A point set, line 2 the first; names count from 1 unless given."""
    count = len(east)
    columns = {
        "name": np.array([str(word) for word in (range(1, count + 1) if name is None else name)], object),
        "code": np.array([""] * count if code is None else list(code), object),
        "source_line": np.arange(2, count + 2),
    }
    if time is not None:
        columns["time"] = np.asarray(time, float)
    return make_points(east, north, height, **columns, **more)


def put(columns, at, values):
    """Each of ``columns`` with a value of ``values`` put in before place ``at``."""
    return [[*list(column[:at]), value, *list(column[at:])] for column, value in zip(columns, values)]


# Clean surveys of other kinds, each a point set


def vehicle(random):
    count = 1500
    speed = np.clip(12 + np.cumsum(random.normal(0, 0.3, count)), 2, 30)
    heading = np.cumsum(random.normal(0, 0.01, count))
    east, north = np.cumsum(speed * np.cos(heading)), np.cumsum(speed * np.sin(heading))
    keep = np.ones(count, bool)
    for start in random.integers(0, count - 150, 3):  # tunnels
        keep[start : start + int(random.integers(5, 100))] = False
    height = 200 + np.cumsum(random.normal(0, 0.05, count))
    return survey(EAST + east[keep], NORTH + north[keep], height[keep], time=times(count, 1.0)[keep])


def radial(random):
    """From the middle out; the way back is stored on half of the rays."""
    places = []
    for angle in np.linspace(0, 2 * np.pi, 20, endpoint=False):
        away = np.arange(0, 60, 0.5)
        back = away[::-1] if random.random() < 0.5 else away[:0]
        places += [(d * np.cos(angle), d * np.sin(angle)) for d in np.append(away, back)]
    xy = np.array(places) + random.normal(0, 0.02, (len(places), 2))
    return survey(EAST + xy[:, 0], NORTH + xy[:, 1], 100 + 0.02 * xy[:, 0])


def side_shots(random):
    """A total station on a local grid: codes, no walk, and a backsight far off between the shots."""
    count = 300
    xy = 1000 + random.uniform(-120, 120, (count, 2))
    code = random.choice(["KT", "TREE", "GR", "MH", "WALL"], count).tolist()
    angle, away = random.uniform(0, 6.28), random.uniform(400, 900)
    place = (1000 + away * np.cos(angle), 1000 + away * np.sin(angle), 55.0, "BS", "STN1")
    columns = (xy[:, 0], xy[:, 1], 50 + 0.02 * xy[:, 0], code, range(100, 100 + count))
    east, north, height, code, name = put(columns, int(random.integers(0, count)), place)
    return survey(east, north, height, name, code)


def two_streets(random):
    one, other = (to_and_fro(5, 80.0, seed=int(random.integers(99))) for _ in range(2))
    far = random.uniform(1000, 4000)
    return survey(np.append(one[0], other[0] + far), np.append(one[1], other[1]), np.append(one[2], other[2]))


def base_first(random):
    east, north, height = to_and_fro(seed=int(random.integers(99)))
    angle, away = random.uniform(0, 6.28), random.uniform(150, 9000)
    columns = (east, north, height, [""] * len(east), range(1, len(east) + 1))
    place = (EAST + away * np.cos(angle), NORTH + away * np.sin(angle), 99.0, "CP", "BASE1")
    east, north, height, code, name = put(columns, 0, place)
    return survey(east, north, height, name, code)


def unnamed_base_last(random):
    """Nothing but coordinates: only its place tells a base from the walk."""
    east, north, height = to_and_fro(seed=int(random.integers(99)))
    away = random.uniform(150, 9000)
    return survey(
        np.append(east, EAST + away), np.append(north, NORTH), np.append(height, 99.0), [""] * (len(east) + 1)
    )


def control_points(random):
    """Marks around the site, stored in the middle of the walk and at its ends."""
    east, north, height = to_and_fro(seed=int(random.integers(99)))
    columns = [east, north, height, ["GR"] * len(east), range(1, len(east) + 1)]
    for i in range(4):
        angle, away = random.uniform(0, 6.28), random.uniform(100, 600)
        at = int(random.choice([0, len(columns[0]), random.integers(0, len(east))]))
        place = (EAST + 30 + away * np.cos(angle), NORTH + 15 + away * np.sin(angle), 101.0, "CP", f"CP{i + 1}")
        columns = put(columns, at, place)
    return survey(*columns[:3], columns[4], columns[3])


def sorted_by_name(random):
    """As text: 1, 10, 100, 101, …"""
    east, north, height = to_and_fro(int(random.integers(4, 20)), seed=int(random.integers(99)))
    name = [str(i + 1) for i in range(len(east))]
    order = np.argsort(np.array(name))
    return survey(east[order], north[order], height[order], [name[i] for i in order])


def without_order(random):
    east, north, height = to_and_fro(seed=int(random.integers(99)))
    order = random.permutation(len(east))
    return survey(east[order], north[order], height[order], [""] * len(east))


def few_points(random):
    count, size = int(random.integers(2, 12)), 10 ** random.uniform(0, 3)
    xy = random.normal(0, size, (count, 2))
    return survey(EAST + xy[:, 0], NORTH + xy[:, 1], 100 + random.normal(0, 1, count))


def two_rovers(random):
    """Two walks at once, sorted by time: the file goes to and fro between them."""
    one, other = to_and_fro(6, seed=1), to_and_fro(6, seed=2)
    time = np.append(times(len(one[0])), times(len(other[0])) + 0.2)
    order = np.argsort(time)
    columns = [np.append(a, b) for a, b in zip(one, (other[0] + random.uniform(60, 400), other[1], other[2]))]
    return survey(*(column[order] for column in columns), time=time[order])


def driven_between(random):
    """A walk, a drive with a point every ten seconds, another walk."""
    one, other = to_and_fro(5, seed=1), to_and_fro(5, seed=2)
    drive = np.arange(1, 20) * 130.0
    east = np.concatenate([one[0], EAST + 60 + drive, other[0] + 60 + drive[-1] + 130])
    north = np.concatenate([one[1], np.full(len(drive), NORTH), other[1]])
    height = np.concatenate([one[2], np.full(len(drive), 100.0), other[2]])
    first = times(len(one[0]))
    driven = first[-1] + 60 + 10 * np.arange(1, len(drive) + 1)
    time = np.concatenate([first, driven, driven[-1] + 60 + times(len(other[0])) - 1.7e9])
    return survey(east, north, height, time=time)


def offset_shots(random):
    """Trees measured from afar in the middle of a walk."""
    east, north, height = to_and_fro(seed=int(random.integers(99)))
    columns = [east, north, height, ["GR"] * len(east), range(1, len(east) + 1)]
    for i in range(5):
        at, angle, away = int(random.integers(5, len(east) - 5)), random.uniform(0, 6.28), random.uniform(20, 95)
        place = (east[at] + away * np.cos(angle), north[at] + away * np.sin(angle), 101.0, "TREE", f"T{i}")
        columns = put(columns, at, place)
    return survey(*columns[:3], columns[4], columns[3])


def side_trip(random):
    """A few points somewhere else in the site, and on from where the walk was left."""
    east, north, height = to_and_fro(seed=int(random.integers(99)))
    at, count, away = int(random.integers(5, len(east) - 5)), int(random.integers(3, 15)), random.uniform(25, 90)
    there = east[at] + away + 0.5 * np.arange(count)
    return survey(
        np.insert(east, [at] * count, there), np.insert(north, [at] * count, np.full(count, north[at])),
        np.insert(height, [at] * count, np.full(count, 100.0)),
    )  # fmt: skip


def sparse_tail(random):
    """A dense walk, then single points every 150 m along a road."""
    east, north, height = to_and_fro(seed=int(random.integers(99)))
    count = int(random.integers(1, 15))
    road = east.max() + 150 * np.arange(1, count + 1)
    return survey(np.append(east, road), np.append(north, np.full(count, NORTH)), np.append(height, np.full(count, 99)))


def sparse_between(random):
    """Two walks and three single points on the road between them."""
    one, other = to_and_fro(5, seed=1), to_and_fro(5, seed=2)
    road = EAST + 60 + np.array([300.0, 600.0, 900.0])
    return survey(
        np.concatenate([one[0], road, other[0] + 1300]), np.concatenate([one[1], np.full(3, NORTH), other[1]]),
        np.concatenate([one[2], np.full(3, 100.0), other[2]]),
    )  # fmt: skip


def mountain_road(random):
    along = 3.0 * np.arange(3000)
    return survey(EAST + along, NORTH + 50 * np.sin(along / 300), 300 + along / 9000 * 2200)


def wide_grid(random):
    x, y = (each.ravel() for each in np.meshgrid(np.arange(0, 2000, 100.0), np.arange(0, 2000, 100.0)))
    return survey(EAST + x, NORTH + y, 100 + 0.01 * x)


def stored_twice(random):
    """A block of lines again, later in the file."""
    columns = to_and_fro(seed=int(random.integers(99)))
    at = int(random.integers(0, len(columns[0]) - 10))
    count = int(random.integers(1, 6))
    into = int(random.integers(0, len(columns[0])))
    return survey(*(np.insert(column, [into] * count, column[at : at + count]) for column in columns))


CLEAN = (
    vehicle, radial, side_shots, two_streets, base_first, unnamed_base_last, control_points, sorted_by_name,
    without_order, few_points, two_rovers, driven_between, offset_shots, side_trip, sparse_tail, sparse_between,
    mountain_road, wide_grid, stored_twice,
)  # fmt: skip
