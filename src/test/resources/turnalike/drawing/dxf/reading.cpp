#include <dxflib/dl_creationadapter.h>
#include <dxflib/dl_dxf.h>

#include <cmath>
#include <cstdio>
#include <vector>

// Reads a DXF with dxflib and prints of each polyline: layer, vertices, whether it is closed, its area, and where it begins and ends along x.
class Reading : public DL_CreationAdapter {
    struct Vertex { double x, y, bulge; };
    std::vector<Vertex> run;
    bool closed = false;
    bool open = false;
    std::string layer;

public:
    int lines = 0;
    int texts = 0;

    void addPolyline(const DL_PolylineData& data) override {
        closed = (data.flags & 1) != 0;
        layer = attributes.getLayer();
        run.clear();
        open = true;
    }
    void addVertex(const DL_VertexData& data) override { run.push_back({data.x, data.y, data.bulge}); }
    void addLine(const DL_LineData&) override { lines++; }
    void addText(const DL_TextData&) override { texts++; }

    // The shoelace formula, and for each bulge the segment of the circle: r²(angle − sin angle)/2.
    void endSequence() override {
        if (!open) return;
        open = false;
        double area = 0, least = 1e300, most = -1e300;
        for (size_t i = 0; i < run.size(); i++) {
            const Vertex& a = run[i];
            const Vertex& b = run[(i + 1) % run.size()];
            area += (a.x * b.y - b.x * a.y) / 2;
            if (a.bulge != 0) {
                double angle = 4 * std::atan(a.bulge);
                double radius = std::hypot(b.x - a.x, b.y - a.y) / 2 / std::sin(angle / 2);
                area += radius * radius * (angle - std::sin(angle)) / 2;
            }
            if (a.x < least) least = a.x;
            if (a.x > most) most = a.x;
        }
        std::printf("%s %zu %d %.4f %.4f %.4f\n", layer.c_str(), run.size(), closed ? 1 : 0, std::fabs(area), least, most);
    }
};

int main(int, char** arguments) {
    Reading reading;
    DL_Dxf dxf;
    if (!dxf.in(arguments[1], &reading)) return 1;
    std::printf("%d %d\n", reading.lines, reading.texts);
}
