using BoxHeights.Interop;

namespace BoxHeights;

// The types say how notebooks show them; here, so that their own rooms know nothing of it.

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct Distance;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct DistanceRange;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct DistanceSet;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct Volume;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct Ratio;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct BoxHeight;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct Level;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct Elevation;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct PlanPoint;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct BoxSize;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct PlateSize;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial record struct WallArea;

[TypeFormatterSource(typeof(NotebookFaces))]
public readonly partial struct Items<T>;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class Evaluation;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class Finding;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class Cause;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class MendedDwelling;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class RoomPlan;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class WallView;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class RoomView;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class FaceView;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class WallElevation;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class RoomPicture;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class PolePicture;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class MarkSheet;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class StoryPole;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class OrderList;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class PunchList;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class PreInspection;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial record Dwelling;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class CutoutList;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class CeilingPlan;

[TypeFormatterSource(typeof(NotebookFaces))]
public sealed partial class StoreyPicture;
