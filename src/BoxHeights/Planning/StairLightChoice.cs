using System.Collections.Generic;

namespace BoxHeights;

/// <summary>The lights of one interval at one phase.</summary>
internal sealed class StairLightChoice(int every, int start, ExactDistance phase, ExactDistance fromMiddle)
{
    private readonly ExactDistance fromMiddle = fromMiddle;
    private int onStuds;
    private int inTheWay;
    private ExactDistance sum;

    public int Every { get; } = every;

    public int Start { get; } = start;

    public ExactDistance Phase { get; } = phase;

    /// <summary>For each light its stud face, −1 where it needs blocking.</summary>
    public List<int> Faces { get; } = [];

    public ExactDistance Worst { get; private set; }

    public void Add(int face, bool isInTheWay, ExactDistance shift)
    {
        Faces.Add(face);
        onStuds += face < 0 || isInTheWay ? 0 : 1;
        inTheWay += isInTheWay ? 1 : 0;
        sum += shift;
        Worst = shift > Worst && !isInTheWay ? shift : Worst;
    }

    /// <summary>Compared with another phase of the same interval. Where all is equal the lower phase is kept, whatever was tried first.</summary>
    public bool IsBetterPhase(StairLightChoice other)
    {
        int order = other.onStuds.CompareTo(onStuds);
        order = order != 0 ? order : inTheWay.CompareTo(other.inTheWay);
        order = order != 0 ? order : Worst.CompareTo(other.Worst);
        order = order != 0 ? order : sum.CompareTo(other.sum);
        order = order != 0 ? order : fromMiddle.CompareTo(other.fromMiddle);
        return (order != 0 ? order : Phase.CompareTo(other.Phase)) < 0;
    }

    /// <summary>Compared with another interval or first tread: the larger share on studs, then the smaller one in studs' way, then more lights.</summary>
    public bool IsBetterInterval(StairLightChoice other)
    {
        int order = ((long)onStuds * other.Faces.Count).CompareTo((long)other.onStuds * Faces.Count);
        order = order != 0 ? order : ((long)other.inTheWay * Faces.Count).CompareTo((long)inTheWay * other.Faces.Count);
        return (order != 0 ? order : Faces.Count.CompareTo(other.Faces.Count)) > 0;
    }
}
