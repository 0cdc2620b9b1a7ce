"""Reads DXF files with the ezdxf library and prints a line of figures for each: see DxfLibraryTest."""
import math
import sys

import ezdxf
from ezdxf import bbox


def ring_area(points, closed):
    """Signed area of x, y, bulge points: trapezoids, and a circular segment for each bulge."""
    total = 0.0
    count = len(points) if closed else len(points) - 1
    for i in range(count):
        x0, y0, b = points[i]
        x1, y1, _ = points[(i + 1) % len(points)]
        total += (x0 * y1 - x1 * y0) / 2
        if b:
            sweep = 4 * math.atan(b)
            radius = math.hypot(x1 - x0, y1 - y0) / (2 * math.sin(abs(sweep) / 2))
            total += radius ** 2 / 2 * (sweep - math.sin(sweep))
    return total


for path in sys.argv[1:]:
    doc = ezdxf.readfile(path)
    audit = doc.audit()
    area = 0.0
    closed = 0
    circles = 0
    for e in doc.modelspace():
        if not (e.dxf.layer == "cut" or e.dxf.layer.startswith("level-")):
            continue
        if e.dxftype() == "CIRCLE":
            circles += 1
            area += math.pi * e.dxf.radius ** 2
        elif e.dxftype() == "LWPOLYLINE":
            closed += bool(e.closed)
            area += abs(ring_area(e.get_points("xyb"), e.closed))
        elif e.dxftype() == "POLYLINE":
            closed += bool(e.is_closed)
            points = [(v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)) for v in e.vertices]
            area += abs(ring_area(points, e.is_closed))
        else:
            raise SystemExit("unexpected " + e.dxftype())
    for e in doc.modelspace():
        if e.dxf.layer not in doc.layers:
            raise SystemExit("no layer " + e.dxf.layer)
    ports = doc.viewports.get("*Active") if doc.dxfversion != "AC1009" else doc.viewports.get("*ACTIVE")
    print(doc.dxfversion, doc.header["$INSUNITS"], len(audit.errors), len(audit.fixes), closed, circles,
          len(ports), "%.12g" % area)
